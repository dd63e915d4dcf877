/**
 * Every state a screen can be in, as data: axe, the screenshots and the demo page run over this list, so that none is
 * forgotten. A story gives the answers; `taps` are what a person touches to get there.
 */
export interface ScreenState {
  readonly id: string;
  /** A story of `flows/fitting/stories`, whose answers stand. */
  readonly story: string;
  /** A question, `welcome`, `review` or `finished`. */
  readonly at: string;
  readonly taps?: readonly string[];
  /** What stands on the screen once it is there. */
  readonly shows?: string;
  /** Typed into the first text field before the taps. */
  readonly typed?: string;
  /** A draft is in storage, or one that cannot be read. */
  readonly draft?: 'kept' | 'foreign';
  /** Storage is refused. */
  readonly refused?: true;
  /** Nobody is there. */
  readonly idle?: true;
  /** Answers laid over the story's. */
  readonly answers?: Readonly<Record<string, unknown>>;
}

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

/** One for each question of the flow, in order, then what can happen on and around them. */
export const statesOf = (questions: readonly string[]): readonly ScreenState[] => [
  { id: 'welcome', story: TYPICAL, at: 'welcome' },
  { id: 'welcome-draft', story: TYPICAL, at: 'welcome', draft: 'kept' },
  { id: 'welcome-foreign-draft', story: TYPICAL, at: 'welcome', draft: 'foreign' },
  { id: 'welcome-no-storage', story: TYPICAL, at: 'welcome', refused: true },
  ...questions.map(question),
  { ...question('reason'), id: 'why-we-ask', taps: ['.why summary'] },
  { ...question('reason'), id: 'start-over', taps: ['.stub-foot .plain:last-child'] },
  { ...question('reason'), id: 'idle-warning', idle: true },
  {
    ...question('activity'),
    id: 'activity-group',
    answers: { activity: 'none-yet' },
    taps: ['li:nth-child(3) .choice'],
  },
  { ...question('activity'), id: 'activity-search', typed: 'ball' },
  { ...question('activity'), id: 'activity-search-nothing', typed: 'zzz' },
  { ...question('now-size'), id: 'size-letters', typed: 'abc', taps: ['.foot .main'] },
  { ...question('now-size'), id: 'size-other-unit', typed: '265', taps: ['.foot .main'] },
  { ...question('signs'), id: 'signs-confirm', taps: ['[data-sign="numb-feet"]'] },
  { ...question('signs'), id: 'signs-ticked', taps: ['[data-sign="numb-feet"]', '.confirm .main'] },
  { id: 'signs-child', story: 'child-growth-spurt', at: 'signs' },
  { ...question('body'), id: 'body-marked', taps: ['label:has(input[name="heel"])', 'label:has(input[name="knee"])'] },
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
  { id: 'print-health', story: HEALTH_STORY, at: 'finished', taps: [act('card')], shows: act('healthNo') },
  { id: 'card', story: HEALTH_STORY, at: 'finished', taps: [act('card'), act('healthNo')], shows: 'iframe.twin' },
  { id: 'hand-over', story: TYPICAL, at: 'finished', taps: [act('hand')], shows: act('handYes') },
  { id: 'handed', story: TYPICAL, at: 'finished', taps: [act('hand'), act('handYes')], shows: act('done') },
];
