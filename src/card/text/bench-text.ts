import { asMeasured } from '../../attributes/as-measured.ts';
import type { AttributeKey } from '../../attributes/attributes.ts';
import { sayValue } from '../../attributes/say-value.ts';
import { listText } from '../../units/list-text.ts';
import type { Words } from '../../words/words.ts';
import type { Bench, BenchNeed, BenchReason } from '../card.ts';
import { benchRecordText } from './bench-record-text.ts';
import type { BenchText } from './card-text.ts';
import { backingText, type Cite } from './cautions-text.ts';
import { mustText } from './must-text.ts';

/** What only the fitter's copy says: every need with its reasons, how well each is backed, and by whom. */
export function benchText(bench: Bench, currency: string, cite: Cite, words: Words): BenchText {
  const groups = reasonGroups(bench, words);
  const rules = groups.flatMap((group) => group.uses.map((use) => use.rule));
  return {
    ...benchRecordText(bench, words),
    heading: words.say('card.bench.heading'),
    hold: words.say(`card.bench.hold.${bench.hold}`),
    needs: bench.needs.map((need) => ({
      name: words.say(`card.strip.${need.attribute}.name`),
      range: idealText(need.attribute, need.ideal, currency, words),
      why: words.say('card.bench.why', {
        numbers: listText(numbersOf(need, rules).map(String), words.language),
      }),
    })),
    reasons: {
      heading: words.say('card.bench.reasons'),
      groups: groups.map(({ from, uses }) => ({ from, items: uses.map((use) => reasonText(use, cite, words)) })),
    },
    musts: {
      heading: words.say('card.bench.musts'),
      items: bench.musts.map((must) =>
        words.say('card.bench.must', {
          must: mustText(must.attribute, must.value, currency, words),
          from: listText(
            must.from.map((from) => fromText(from, words)),
            words.language,
            'and',
          ),
        }),
      ),
    },
    unknown: {
      heading: words.say('card.bench.unknown'),
      items: bench.unknown.map((question) => words.say(`question.${question}.ask`)),
    },
    sources: {
      heading: words.say('card.bench.sources'),
      items: bench.sources.map(({ id, authors, year, title, where, known }) => {
        const line =
          year === undefined
            ? words.say('card.bench.source-undated', { cite: cite(id), authors, title, where })
            : words.say('card.bench.source', { cite: cite(id), authors, year: String(year), title, where });
        return known === 'memory' ? `${line} ${words.say('card.bench.memory')}` : line;
      }),
    },
    ...(bench.note ? { note: words.say('card.bench.note', { note: bench.note }) } : {}),
  };
}

/** The numbers of a need's reasons, as they stand below. */
const numbersOf = ({ reasons }: BenchNeed, rules: readonly string[]): readonly number[] =>
  [...new Set(reasons.map((reason) => rules.indexOf(reason.rule) + 1))].sort((one, other) => one - other);

/** A wanted range as a fitter says it: "medium to soft", "4 mm to 8 mm". */
function idealText(key: AttributeKey, ideal: readonly [number, number], currency: string, words: Words): string {
  const [low = '', high = ''] = asMeasured(key, ideal).map((value) => sayValue(words, key, tenth(value), currency));
  return low === high ? low : words.say('card.bench.range', { from: low, to: high });
}

const tenth = (value: number): number => Math.round(value * 10) / 10;

interface ReasonGroup {
  readonly from: string;
  readonly uses: readonly BenchReason[];
}

/** Every rule once, under the answers it is traced to, in the order of the needs. */
function reasonGroups(bench: Bench, words: Words): readonly ReasonGroup[] {
  const all = bench.needs.flatMap((need) => need.reasons);
  const groups = new Map<string, BenchReason[]>();
  for (const rule of new Set(all.map((reason) => reason.rule))) {
    const uses = all.filter((reason) => reason.rule === rule);
    const from = listText([...new Set(uses.map((use) => fromText(use.from, words)))], words.language, 'and');
    groups.set(from, [...(groups.get(from) ?? []), ...uses.slice(0, 1)]);
  }
  return [...groups].map(([from, uses]) => ({ from, uses }));
}

/** A rule in words, and how well it is backed unless it is common practice, which the heading speaks of. */
function reasonText({ rule, grade, source }: BenchReason, cite: Cite, words: Words): string {
  const why = words.say(`rule.${rule}.why`);
  if (grade === 'common-practice' && source === 'common-practice') return why;
  return words.say('card.bench.reason', {
    why: why.replace(/[.\s]+$/, ''),
    backing: backingText(grade, source, cite, words),
  });
}

/** What a reason is traced to, in the question's own words. */
function fromText(from: string, words: Words): string {
  const [question = from, part] = from.split(':');
  if (question === 'observation') return words.say('card.bench.observation');
  const asked = `question.${question}.ask`;
  const ask = words.has(asked) ? words.say('card.bench.quoted', { text: words.say(asked) }) : question;
  const of =
    part && ['region', 'option'].map((kind) => `question.${question}.${kind}.${part}`).find((k) => words.has(k));
  return of ? `${ask}: ${words.say(of)}` : ask;
}
