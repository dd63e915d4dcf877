import { benchStates } from './bench-states.ts';
import type { ScreenState } from './screen-state.ts';
import { shopStates } from './shop-states.ts';

/** Stories that meet the questions the typical visitor does not. */
const MET_BY: Readonly<Record<string, string>> = {
  'else-loads': 'something-else-drummer-loads',
  'worn-to-and-from': 'indoor-only-two-pairs',
  'now-feel': 'nurse-on-tiles',
  ankles: 'netball-old-sprain',
};
const TYPICAL = 'trail-and-gym';

const question = (id: string): ScreenState => ({ id: `ask-${id}`, story: MET_BY[id] ?? TYPICAL, at: id });
const result = (id: string, story: string): ScreenState => ({
  id: `result-${id}`,
  story,
  at: 'finished',
  shows: 'lw-result',
});
const HEALTH_STORY = 'netball-old-sprain';
const act = (name: string): string => `[data-act="${name}"]`;
const typed = (text: string) => ({ into: 'main input[type="text"], main input[type="search"]', typed: text });

/** The customer's: one for each question of the flow, in order, then what can happen on and around them. */
export const customerStates = (questions: readonly string[]): readonly ScreenState[] => [
  { id: 'welcome', story: TYPICAL, at: 'welcome' },
  { id: 'welcome-draft', story: TYPICAL, at: 'welcome', draft: 'kept' },
  { id: 'welcome-foreign-draft', story: TYPICAL, at: 'welcome', draft: 'foreign' },
  { id: 'welcome-no-storage', story: TYPICAL, at: 'welcome', refused: true },
  ...questions.map(question),
  { ...question('reason'), id: 'why-we-ask', steps: ['.why summary'] },
  { ...question('reason'), id: 'start-over', steps: ['.stub-foot .plain:last-child'] },
  { ...question('reason'), id: 'idle-warning', idle: true },
  {
    ...question('activity'),
    id: 'activity-group',
    answers: { activity: 'none-yet' },
    steps: ['main li:nth-child(3) .choice'],
  },
  { ...question('activity'), id: 'activity-search', steps: [typed('ball')] },
  { ...question('activity'), id: 'activity-search-nothing', steps: [typed('zzz')] },
  { ...question('floors'), id: 'floors-how-often', steps: ['.foot .main'] },
  { ...question('now-size'), id: 'size-letters', steps: [typed('abc'), '.foot .main'] },
  { ...question('now-size'), id: 'size-other-unit', steps: [typed('265'), '.foot .main'] },
  { id: 'size-rare-at-age', story: 'child-growth-spurt', at: 'now-size', steps: [typed('20.5'), '.foot .main'] },
  { ...question('signs'), id: 'signs-confirm', steps: ['[data-sign="numb-feet"]'] },
  { ...question('signs'), id: 'signs-ticked', steps: ['[data-sign="numb-feet"]', '.confirm .main'] },
  { id: 'signs-child', story: 'child-growth-spurt', at: 'signs' },
  { ...question('body'), id: 'body-marked', steps: ['label:has(input[name="heel"])', 'label:has(input[name="knee"])'] },
  { id: 'review', story: TYPICAL, at: 'review' },
  result('pairs', TYPICAL),
  result('one-activity', 'same-again'),
  result('two-pairs', 'indoor-only-two-pairs'),
  result('child', 'child-growth-spurt'),
  result('health-skipped', 'rather-not-say-health'),
  result('refer', 'walker-diabetes-numb-toes'),
  result('refer-now', 'swollen-and-breathless'),
  result('fitter-first', 'prescribed-orthosis'),
  result('other-footwear', 'studs-sport'),
  result('keep-yours', 'pair-is-fine'),
  {
    ...result('no-pairs', 'warehouse-toe-cap'),
    answers: { budget: 'up-to-60', 'place-rules': ['toe-cap', 'all-white'] },
  },
  { id: 'print-health', story: HEALTH_STORY, at: 'finished', steps: [act('card')], shows: act('healthNo') },
  { id: 'card', story: HEALTH_STORY, at: 'finished', steps: [act('card'), act('healthNo')], shows: 'iframe.twin' },
  { id: 'hand-over', story: TYPICAL, at: 'finished', steps: [act('hand')], shows: act('handYes') },
  { id: 'handed', story: TYPICAL, at: 'finished', steps: [act('hand'), act('handYes')], shows: act('done') },
];

/**
 * Every state a screen can be in, as data: axe, the screenshots and the demo page run over this list, so that none is
 * forgotten. The customer's, then the fitter's, then the shop's.
 */
export const statesOf = (questions: readonly string[]): readonly ScreenState[] => [
  ...customerStates(questions),
  ...benchStates,
  ...shopStates,
];
