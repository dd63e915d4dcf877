import { keptReason } from '../../card/text/kept-reason.ts';
import { MADE_FOR } from '../../profile/preferences.ts';
import { compareLineUps, type Moved } from '../../shortlist/compare.ts';
import { partsOf } from '../../shortlist/parts-of.ts';
import type { BoxMark } from '../../stock/today.ts';
import { listText } from '../../units/list-text.ts';
import type { Words } from '../../words/words.ts';
import type { BenchLine } from '../../worker/bench-line.ts';
import type { BenchNotes } from './bench-ticket.ts';
import { fromText } from './why-text.ts';

/** A move, and what was marked on the pair's boxes where that is what shut it out. */
export interface MovedAtBench extends Moved {
  readonly mark?: BoxMark['what'];
}

/** What moved between two lines of one ticket, line-up by line-up where both have it. */
export function movedBetween(
  before: BenchLine,
  after: BenchLine,
  marks: readonly BoxMark[] = [],
): readonly MovedAtBench[] {
  const parts = ({ line }: BenchLine) => partsOf(line.profile);
  const moved = after.line.shortlist.lineUps.flatMap((lineUp) => {
    const was = before.line.shortlist.lineUps.find((each) => each.for === lineUp.for);
    const part = parts(after).find((each) => each.for === lineUp.for);
    const partWas = parts(before).find((each) => each.for === lineUp.for);
    if (!was || !part || !partWas) return [];
    return compareLineUps({ lineUp: was, ...partWas }, { lineUp, ...part }).map((each): MovedAtBench => {
      const boxes = was.entries.find(({ shoe }) => shoe.id === each.shoe.id)?.boxes ?? [];
      const mark = marks.findLast(({ box }) => boxes.some((fit) => fit.box.id === box));
      return each.what === 'went-out' && each.by === undefined && mark ? { ...each, mark: mark.what } : each;
    });
  });
  return [...new Map(moved.map((each) => [each.shoe.id, each])).values()];
}

/** What moved, in sentences with their cause; what one answer moved shares a sentence. */
export function movedTexts(moved: readonly MovedAtBench[], notes: BenchNotes, words: Words): readonly string[] {
  const byAnswer = new Map<string, MovedAtBench[]>();
  for (const each of moved) {
    const answer = isByHand(each, notes) || each.by === undefined ? undefined : each.from[0];
    const key = answer ?? `alone ${each.shoe.id}`;
    byAnswer.set(key, [...(byAnswer.get(key) ?? []), each]);
  }
  return [...byAnswer].map(([answer, together]) => {
    const [only] = together;
    if (together.length === 1 && only) return movedText(only, notes, words);
    const moves = together.map(({ shoe, what, by }) =>
      words.say('bench.moved.one', {
        moved: words.say(`moved.${what}`, { shoe: shoe.name }),
        what: causeOf(what, by ?? '', words),
      }),
    );
    const data = { moves: listText(moves, words.language, 'and'), question: fromText(answer, words) };
    return words.say('bench.moved.together', data);
  });
}

const isByHand = ({ shoe, what, mark }: MovedAtBench, { aside }: BenchNotes): boolean =>
  mark !== undefined || (what === 'went-out' && aside.some((each) => each.shoe === shoe.id));

function movedText({ shoe, what, by, from, mark }: MovedAtBench, notes: BenchNotes, words: Words): string {
  const moved = words.say(`moved.${what}`, { shoe: shoe.name });
  const aside = notes.aside.find((each) => each.shoe === shoe.id);
  if (what === 'went-out' && aside) {
    return words.say('bench.moved.aside', { moved, reason: keptReason(aside.reason, words) });
  }
  if (mark) return words.say('bench.moved.aside', { moved, reason: words.say(`bench.moved.${mark}`) });
  if (by === undefined) return words.say('moved.others', { moved });
  const cause = causeOf(what, by, words);
  const [first] = from;
  return first === undefined
    ? words.say('moved.by', { moved, what: cause })
    : words.say('moved.because', { moved, what: cause, question: fromText(first, words) });
}

/** A pair that goes out or down over what it is made for is not made for it. */
const causeOf = (what: MovedAtBench['what'], by: string, words: Words): string =>
  by === MADE_FOR && (what === 'went-out' || what === 'down')
    ? words.say('bench.moved.not-made-for')
    : causeName(by, words);

/** Properties that a must is about where it has a name of its own. */
const ABOUT: Readonly<Record<string, string>> = {
  'price-max': 'price',
  'stack-cap': 'heel-stack',
  'closure-not': 'closure',
  'material-not': 'materials',
  'colour-not': 'colour',
};

/** The need, must or preference that moved a pair, by its bare name. */
function causeName(by: string, words: Words): string {
  const about = ABOUT[by] ?? by;
  const keys = [`card.strip.${about}.name`, `attribute.${about}.name`, `bench.from.${about}`, `reason.${about}`];
  const key = keys.find((each) => words.has(each));
  return key === undefined ? by : words.say(key);
}
