import type { Kept, KeptTicket, ScreenState, Step } from './screen-state.ts';

/** The PIN of every tablet shown here. */
export const STATES_PIN = '2468';

const WAITING: readonly KeptTicket[] = [
  {
    word: 'heron',
    number: 3,
    story: 'netball-old-sprain',
    waited: 34,
    overrides: [{ question: 'budget', value: 'up-to-160', by: 'LT', reason: 'asked-again' }],
  },
  { word: 'otter', number: 5, story: 'walker-diabetes-numb-toes', waited: 21 },
  { word: 'maple', number: 6, story: 'cleared-by-clinician', waited: 12 },
  { word: 'kettle', number: 8, story: 'indoor-only-two-pairs', waited: 4, hold: 'none' },
  { word: 'linnet', number: 9, story: 'rather-not-say-health', waited: 0, hold: 'skipped' },
];
const KEPT: Kept = { pin: 'set', tickets: WAITING };

const toPin: readonly Step[] = ['[data-act="staff"]'];
const into = (name: string, typed: string): Step => ({ into: `input[name="${name}"]`, typed });
const pinTyped = (pin: string): readonly Step[] => [
  ...toPin,
  into('pin', pin),
  into('initials', 'LT'),
  'lw-pin button[type="submit"]',
];

const locked = (id: string, kept: Kept, steps: readonly Step[], shows = 'lw-pin form'): ScreenState => ({
  id: `bench-${id}`,
  story: 'trail-and-gym',
  at: 'welcome',
  kept,
  steps,
  shows,
});

/** A state behind the PIN: at the tickets first, then whatever is tapped. */
export const unlocked = (id: string, steps: readonly Step[], shows: string, kept: Kept = KEPT): ScreenState =>
  locked(id, kept, [...pinTyped(STATES_PIN), ...steps], shows);

/** A ticket's own screens: the view, what is tapped there. */
const ticket = (id: string, name: string, view: string, steps: readonly Step[], shows: string): ScreenState =>
  unlocked(
    id,
    [`[data-ticket="${name}"]`, ...(view === 'profile' ? [] : [`button[data-view="${view}"]`]), ...steps],
    shows,
  );
const SPRAIN = 'heron 3';
const STOPPED = 'otter 5';
const CLEARED = 'maple 6';
const TWO_PAIRS = 'kettle 8';

const change = (question: string): readonly Step[] => [`li[data-question="${question}"] [data-edit]`];
const firstPair = '.line-up .pair:first-child';
const shoeSize = (size: string): Step => `label:has(input[name="try-on-size"][value="${size}"])`;
const chosen = 'lw-decide label:has(input[name="chosen"])';

/** The fitter's: the PIN, the tickets, and one ticket in all its views. */
export const benchStates: readonly ScreenState[] = [
  locked('pin-set', {}, toPin),
  locked('pin', KEPT, toPin),
  locked('pin-wrong', KEPT, pinTyped('1357'), '#pin-error'),
  locked('pin-wait', { ...KEPT, pin: 'slowed' }, pinTyped(STATES_PIN), '#pin-error'),
  locked('pin-forgotten', KEPT, [...toPin, 'lw-pin > .link'], 'lw-pin section.said'),
  unlocked('tickets-none', [], 'lw-keys', { pin: 'set' }),
  unlocked('tickets', [], '.ticket-row[data-stops]'),
  unlocked('code-wrong', [into('code', 'https://example.org/menu'), 'lw-code-reader form button'], '#code-error'),
  unlocked('blank', ['.blank .button'], '.ask-now'),
  ticket('profile', SPRAIN, 'profile', [], '.glance li'),
  ticket('reasons', SPRAIN, 'profile', ['.reasons-of:has(.source) > summary', '.source summary'], '.source[open]'),
  ticket('edit-answer', SPRAIN, 'profile', change('budget'), 'lw-edit-answer .choice'),
  ticket('edit-why', SPRAIN, 'profile', [...change('budget'), 'lw-edit-answer .choice'], 'lw-reason'),
  ticket('edit-floors', SPRAIN, 'profile', change('floors'), 'lw-edit-answer fieldset'),
  ticket('edit-body', SPRAIN, 'profile', change('body'), 'lw-edit-answer .foot'),
  ticket('measure', SPRAIN, 'measure', [], 'lw-size-said'),
  ticket('measure-odd', SPRAIN, 'measure', [{ into: 'lw-measure-feet input[type="text"]', typed: '26.5' }], '.odd'),
  ticket('old-pair', SPRAIN, 'measure', ['[data-part="old-pair"]'], 'lw-measure-old-pair fieldset'),
  ticket('roll', SPRAIN, 'measure', ['[data-part="roll"]'], 'lw-measure-roll fieldset'),
  ticket('sheet', SPRAIN, 'measure', ['[data-part="sheet"]'], 'lw-measure-sheet fieldset'),
  ticket('line-up', SPRAIN, 'line-up', [], 'lw-pull-list li'),
  ticket('line-ups', TWO_PAIRS, 'line-up', [], 'lw-pull-list li'),
  ticket('set-aside-why', SPRAIN, 'line-up', [`${firstPair} .pair-acts .link`], '.ask-aside'),
  ticket(
    'set-aside',
    SPRAIN,
    'line-up',
    [`${firstPair} .pair-acts .link`, '[data-reason="had-it-before"]'],
    '.aside-list li',
  ),
  ticket(
    'compare',
    SPRAIN,
    'line-up',
    [`${firstPair} .check`, '.line-up .pair:nth-child(2) .check'],
    'lw-compare .strip',
  ),
  ticket('pull-in', SPRAIN, 'line-up', [{ into: '.pull-in input', typed: 'a' }], '.pull-in .more li'),
  ticket('box-sold', SPRAIN, 'line-up', ['lw-pull-list li .button:last-child'], 'lw-pull-list details'),
  ticket('try-on', SPRAIN, 'feet', [], 'lw-rub-spots'),
  ticket(
    'tried',
    SPRAIN,
    'feet',
    [shoeSize('too-small'), '.to-rank .button:last-child', '.to-rank .button'],
    '[data-rank]:nth-child(2)',
  ),
  ticket('decide', SPRAIN, 'decide', [], chosen),
  ticket('chosen', SPRAIN, 'decide', [chosen], '.final'),
  ticket('final-card', SPRAIN, 'decide', [chosen, '[data-card="customer-preview"]'], 'iframe.twin'),
  ticket('closing', SPRAIN, 'decide', [chosen, '[data-act="close"]'], '[data-act="close-yes"]'),
  ticket('refer', STOPPED, 'profile', [], 'section.stop'),
  ticket('clearance', STOPPED, 'profile', ['section.stop .button'], 'form.clearance'),
  ticket('refer-decide', STOPPED, 'decide', [], '.decide.none'),
  ticket('cleared', CLEARED, 'profile', [], 'lw-bench-cautions .changed'),
  ticket('not-handed', TWO_PAIRS, 'profile', [], '.not-handed'),
];
