import { listText } from '../../units/list-text.ts';
import type { Words } from '../../words/words.ts';
import type { CardFacts } from '../card.ts';
import { NO_PICTURES, picturesText } from '../pictures.ts';
import { adviceText } from './advice-text.ts';
import { benchText } from './bench-text.ts';
import type { CardText } from './card-text.ts';
import { type Cite, careText, cautionsText } from './cautions-text.ts';
import { easeInText } from './ease-in-text.ts';
import { headText } from './head-text.ts';
import { mustText } from './must-text.ts';
import { fetchText, lineUpsText, surenessKey } from './pairs-text.ts';
import { saidTo } from './said-to.ts';
import { sizeSaid, sizeText } from './size-text.ts';
import { stripsText } from './strips-text.ts';
import { tasksText } from './tasks-text.ts';

/** A card in words. Throws on a key the language lacks, as all words do. */
export function textOf(facts: CardFacts, words: Words, pictures = NO_PICTURES): CardText {
  const letters = [...new Set(facts.lineUps.flatMap((lineUp) => lineUp.pairs.map((pair) => pair.letter)))];
  const cite = citing(facts.bench?.sources ?? []);
  const bench = facts.bench && benchText(facts.bench, facts.shop.currency, cite, words);
  return {
    language: words.language,
    direction: words.direction,
    copy: facts.copy,
    outcome: facts.outcome,
    title: title(facts, letters.length, words),
    lead: lead(facts, letters.length, words),
    // A fitter reads them with where they come from; a chosen pair may have been pulled in against them.
    ...(letters.length > 0 && !bench && !facts.chosen ? mustsText(facts, words) : {}),
    head: headText(facts, words),
    pictures: picturesText(facts.doing, pictures, words),
    fetch: fetchText(facts, words),
    lineUps: lineUpsText(facts, words),
    strips: stripsText(facts, words),
    tasks: tasksText(facts, letters, words),
    ...(facts.size ? { size: sizeText(facts.size, facts.copy, words) } : {}),
    sizeFirst: facts.justSize,
    notes: {
      choices:
        letters.length > 0 && !facts.chosen
          ? [words.say('card.notes.chosen'), ...letters, words.say('card.notes.nothing')]
          : [],
      lines: [words.say('card.notes.size'), words.say('card.notes.note')],
    },
    cautions: cautionsText(facts.cautions, facts.shop.emergencyNumber, cite, words),
    advice: {
      heading: words.say('card.advice.heading'),
      items: adviceItems(facts, words),
    },
    easeIn: easeInText(facts.lineUps, words),
    care: careText(facts.cautions, cite, words),
    ...(bench ? { bench } : {}),
    health: [
      ...(facts.healthAsked ? [] : [words.say('card.health.not-asked')]),
      ...(facts.healthNotes && facts.copy === 'customer' ? [words.say('card.health.printed')] : []),
    ],
    disclaimer: words.say('card.disclaimer'),
    fades: words.say('card.fades'),
    code: facts.code,
    codeSays: words.say('card.head.code'),
    page: (page, pages) => words.say('card.page', { ticket: facts.ticket, page, pages }),
    cut: words.say('card.cut'),
  };
}

const adviceItems = ({ advice, size }: CardFacts, words: Words): readonly string[] =>
  size ? advice.map(({ code }) => adviceText(code, size.toeRoom, words)) : [];

/** Sources by their number in the list, which takes less of a line than a name. */
function citing(sources: readonly { readonly id: string }[]): Cite {
  const ids = sources.map(({ id }) => id);
  return (source) => `[${ids.includes(source) ? ids.indexOf(source) + 1 : source}]`;
}

function title(facts: CardFacts, pairs: number, words: Words): string {
  const chosen = pairNamed(facts, facts.chosen?.shoe);
  if (chosen) return words.say(saidTo(facts, 'card.title.chosen'), { name: chosen });
  if (facts.outcome !== 'shortlist') return words.say(`card.title.${facts.outcome}`);
  const size = facts.justSize ? facts.size?.calculated[0] : undefined;
  if (size && pairs > 0) return words.say('card.title.size', { size: sizeSaid(size, words) });
  return pairs === 0 ? words.say('card.title.none') : words.say('card.title.shortlist', { count: pairs });
}

const pairNamed = (facts: CardFacts, shoe: string | undefined): string | undefined =>
  facts.lineUps.flatMap(({ pairs }) => pairs).find((pair) => pair.shoe === shoe)?.name;

function lead(facts: CardFacts, pairs: number, words: Words): readonly string[] {
  if (facts.chosen) {
    // A fitter reads of the decision where it is recorded.
    if (facts.copy === 'fitter') return followUp(facts, words);
    const second = pairNamed(facts, facts.chosen.second);
    return [
      words.say('card.lead.chosen'),
      ...(second === undefined ? [] : [words.say('card.lead.second', { name: second })]),
      ...followUp(facts, words),
    ];
  }
  switch (facts.outcome) {
    case 'shortlist':
      return [
        ...splitSays(facts, words),
        words.say(leadKey(facts, pairs), { count: pairs, letter: facts.lineUps[0]?.pairs[0]?.letter ?? '' }),
      ];
    case 'refer':
      return [words.say('card.lead.refer'), ...(facts.healthNotes ? [] : [words.say('card.lead.refer-how')])];
    case 'other-footwear': {
      const kind = facts.otherFootwear && `other-footwear.${facts.otherFootwear}.text`;
      return [words.say('card.lead.other-footwear'), ...(kind ? [words.say(kind)] : [])];
    }
    case 'keep-yours':
      return [words.say('card.lead.keep-yours'), words.say('card.lead.keep-yours-back')];
    case 'fitter-first':
      return [words.say('card.lead.fitter-first')];
  }
}

const followUp = ({ followUp: count }: CardFacts, words: Words): readonly string[] =>
  count === undefined ? [] : [words.say('card.follow-up', { count })];

function leadKey(facts: CardFacts, pairs: number): string {
  if (pairs === 0) return 'card.lead.none';
  if (facts.justSize && facts.size?.calculated[0]) return 'card.lead.size';
  return surenessKey(facts.lineUps) ?? 'card.lead.shortlist';
}

function mustsText({ musts, shop }: CardFacts, words: Words): Pick<CardText, 'musts'> {
  const named = musts.map(({ must, value }) => mustText(must, value, shop.currency, words));
  return named.length > 0 ? { musts: words.say('card.lead.musts', { what: listText(named, words.language) }) } : {};
}

/** Two line-ups stand there for a reason, and it is said first. */
function splitSays({ lineUps }: CardFacts, words: Words): readonly string[] {
  const [first, second] = lineUps;
  if (!first || !second) return [];
  const name = (part: string): string => (words.has(`activity.${part}`) ? words.say(`activity.${part}`) : part);
  return [
    first.for === 'indoor' || first.for === 'outdoor'
      ? words.say('split.door')
      : words.say('split.activities', { first: name(first.for), second: name(second.for) }),
  ];
}
