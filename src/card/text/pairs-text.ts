import { sayValue } from '../../attributes/say-value.ts';
import { listText } from '../../units/list-text.ts';
import type { Words } from '../../words/words.ts';
import type { CardFacts, CardLineUp, CardMeets, CardPair } from '../card.ts';
import { labelsOf, widthOf } from './box-text.ts';
import type { FetchBox, FetchText, LineUpText, PairText } from './card-text.ts';
import { mustText } from './must-text.ts';
import { saidTo } from './said-to.ts';

/** The boxes to fetch, a row for each pair, in the order of their letters. */
export function fetchText(facts: CardFacts, words: Words): FetchText {
  const seen = new Set<string>();
  const pairs = facts.lineUps
    .flatMap((lineUp) => lineUp.pairs)
    .filter((pair) => !seen.has(pair.letter) && seen.add(pair.letter))
    .filter(({ shoe }) => !facts.chosen || shoe === facts.chosen.shoe);
  return {
    heading: words.say(facts.chosen ? saidTo(facts, 'card.fetch.chosen') : 'card.fetch.heading'),
    none: words.say('card.fetch.none'),
    boxes: pairs.flatMap((pair) => fetchBox(pair, words)),
  };
}

function fetchBox(pair: CardPair, words: Words): readonly FetchBox[] {
  const [first, ...more] = pair.boxes;
  if (!first) return [];
  const labels = labelsOf(first, words);
  const next = more.map((box) => {
    const label = labelsOf(box, words)[0] ?? '';
    const shelf = words.say('card.fetch.shelf', { place: box.place });
    return words.say('card.fetch.then', { label: box.place === first.place ? label : `${label} · ${shelf}` });
  });
  return [
    {
      letter: pair.letter,
      name: pair.name,
      label: labels[0] ?? pair.name,
      shelf: words.say('card.fetch.shelf', { place: first.place }),
      ...(next.length > 0 ? { next: listText(next, words.language) } : {}),
      others: [...labels.slice(1), ...widthOf(first, words)].join(' · '),
    },
  ];
}

export function lineUpsText(facts: CardFacts, words: Words): readonly LineUpText[] {
  return facts.lineUps.map((lineUp) => ({
    ...(lineUp.for === 'all' ? {} : { heading: words.say('card.for', { for: forText(lineUp.for, words) }) }),
    ...sharedText(lineUp, words),
    pairs: lineUp.pairs.map((pair) => pairText(pair, lineUp, facts, words)),
    notes: notesOf(lineUp, facts, words),
    but: words.say('card.pair.but'),
  }));
}

function sharedText(
  { pairs, sharedReasons, sharedMisgivings }: CardLineUp,
  words: Words,
): Pick<LineUpText, 'sharedMisgivings' | 'sharedReasons'> {
  const of = pairs.length === 2 ? 'both' : 'all';
  const list = (kind: string, shared: readonly CardMeets[]) =>
    shared.map(({ code }) => words.say(`${kind}.${code}`)).join(' · ');
  return {
    ...(sharedReasons ? { sharedReasons: words.say(`card.pair.${of}`, { what: list('reason', sharedReasons) }) } : {}),
    ...(sharedMisgivings
      ? { sharedMisgivings: words.say(`card.pair.${of}`, { what: list('misgiving', sharedMisgivings) }) }
      : {}),
  };
}

/** What a line-up is for, in words; `all` has none. */
export function forText(part: string, words: Words): string {
  const own = `card.line-up.${part}`;
  return words.has(own) ? words.say(own) : words.say(`activity.${part}`);
}

/** How sure the order is, where there is one line-up with an order to be sure of. */
export function surenessKey(lineUps: readonly CardLineUp[]): string | undefined {
  const [only, ...more] = lineUps;
  if (!only || more.length > 0 || only.pairs.length < 2 || only.sureness === 'none') return undefined;
  return `card.pair.${only.sureness}`;
}

function notesOf(lineUp: CardLineUp, facts: CardFacts, words: Words): readonly string[] {
  const sureness = surenessKey([lineUp]);
  const letter = lineUp.pairs[0]?.letter ?? '';
  return [
    ...(sureness && facts.lineUps.length > 1 ? [words.say(sureness, { letter })] : []),
    ...whatIfText(lineUp, facts, words),
    ...moreWithoutText(lineUp, facts, words),
    ...lineUp.ifDropped.map(({ must, value, pairs }) =>
      words.say('card.pair.dropped', { must: mustText(must, value, facts.shop.currency, words), count: pairs }),
    ),
  ];
}

function moreWithoutText({ moreWithout }: CardLineUp, { shop }: CardFacts, words: Words): readonly string[] {
  if (!moreWithout) return [];
  const { must, value, pairs, madeFor } = moreWithout;
  const data = { must: mustText(must, value, shop.currency, words), count: pairs };
  return [words.say(madeFor ? 'card.pair.made-for' : 'card.pair.dropped', data)];
}

function whatIfText({ whatIf }: CardLineUp, facts: CardFacts, words: Words): readonly string[] {
  if (!whatIf) return [];
  const { question, property, option, without } = whatIf;
  const shoe = facts.lineUps.flatMap((each) => each.pairs).find((pair) => pair.shoe === whatIf.shoe)?.name;
  const answer = [
    ...(property ? [`question.${question}.property.${property}.choice.${option}`] : []),
    `question.${question}.option.${option}`,
    `activity.${option}`,
    `floor.${option}`,
    `shoe-kind.${option}`,
  ].find((key) => words.has(key));
  if (!shoe || !answer) return [];
  const ask = words.say(`question.${question}.ask`);
  return [words.say(`what-if.${without ? 'without' : 'instead'}`, { answer: words.say(answer), question: ask, shoe })];
}

function pairText(pair: CardPair, { sharedMisgivings = [] }: CardLineUp, facts: CardFacts, words: Words): PairText {
  const said = new Set([...sharedMisgivings, ...pair.misgivings].map(({ code }) => code));
  const unknown = pair.unknown
    .filter((key) => !said.has(`${key}-unknown`))
    .map((key) => words.say(`card.strip.${key}.name`));
  const first = pair.boxes[0];
  return {
    letter: pair.letter,
    name: pair.name,
    part: words.say(partKey(pair, facts)),
    where: first ? [labelsOf(first, words)[0], words.say('card.fetch.shelf', { place: first.place })].join(' · ') : '',
    ...(pair.price === undefined ? {} : { price: sayValue(words, 'price', pair.price, facts.shop.currency) }),
    reasons: pair.reasons.map((reason) => words.say(`reason.${reason.code}`)),
    misgivings: pair.misgivings.map((misgiving) => words.say(`misgiving.${misgiving.code}`)),
    notes: [
      ...(pair.labelBeside ? [words.say(`card.fetch.${pair.labelBeside}`)] : []),
      ...(pair.lastPair ? [words.say('card.fetch.last')] : []),
    ],
    ...(unknown.length > 0
      ? { unknown: words.say('card.pair.unknown', { what: listText(unknown, words.language) }) }
      : {}),
    but: words.say('card.pair.but'),
  };
}

/** Before the decision, why a pair is in the line-up; after it, what became of it. */
function partKey({ shoe, part }: CardPair, facts: CardFacts): string {
  const { chosen } = facts;
  if (!chosen) return `part.${part}`;
  return shoe === chosen.shoe ? saidTo(facts, 'card.pair.chosen') : 'card.pair.second';
}
