import { html, nothing } from 'lit';
import { sayValue } from '../../attributes/say-value.ts';
import { easeInText } from '../../card/text/ease-in-text.ts';
import { sizeSaid } from '../../card/text/size-text.ts';
import type { Profile } from '../../profile/profile.ts';
import { said as mostSaid } from '../../shortlist/meets.ts';
import type { BoxFit } from '../../sizing/advice.ts';
import type { LabelSystem } from '../../stock/shoe.ts';
import { listText } from '../../units/list-text.ts';
import type { Words } from '../../words/words.ts';
import type { BenchLine } from '../../worker/bench-line.ts';
import { apart } from '../parts/apart.ts';
import type { BenchPair } from './bench-pairs.ts';
import { printedOn } from './box-said.ts';
import { mustText, needName } from './why-text.ts';

/** How it is said: the size system that labels begin with, the shop's money, the language. */
interface Manner {
  readonly first: LabelSystem;
  readonly currency: string;
  readonly words: Words;
}

/** What the bench says of one pair: the boxes to fetch, reasons, misgivings, what nobody measured, and how to ease in. */
export function pairSaid(
  pair: BenchPair,
  { line: { profile }, notHere }: Pick<BenchLine, 'line' | 'notHere'>,
  { first, currency, words }: Manner,
) {
  const { entry, letter, fails } = pair;
  const { shoe, easeIn, boxes, reasons, misgivings } = entry;
  const { price } = shoe.numbers;
  const said = new Set(misgivings.map(({ code }) => code));
  const unknown = entry.unknown.filter((key) => !said.has(`${key}-unknown`)).map((key) => needName(key, words));
  const unmet = (fails ?? []).map((must) =>
    must === 'size'
      ? words.say('lacks.must.size')
      : mustText({ attribute: must, value: mustValue(profile, must) }, currency, words),
  );
  const none = notHere?.shoes.includes(shoe.id)
    ? words.say('bench.lines.noneHere', { size: sizeSaid(notHere.size, words) })
    : '';
  return html`<h3><span class="letter">${letter}</span> <span>${shoe.name}</span></h3>
    <p class="soft">${price === undefined ? nothing : html`<strong class="price">${sayValue(words, 'price', price, currency)}</strong> · `}${words.say(`part.${entry.part}`)}</p>
    ${
      unmet.length > 0
        ? html`<p><strong>${words.say('bench.lines.fails', { what: listText(unmet, words.language, 'and') })}</strong></p>`
        : nothing
    }
    <ul class="boxes" ?hidden=${boxes.length === 0}>
      ${boxes.slice(0, 2).map((fit, at) => boxToFetch(fit, at > 0 ? undefined : none, first, words))}
    </ul>
    <ul class="reasons">
      ${mostSaid(reasons, true).map(
        ({ code }) => html`<li>
          <svg viewBox="0 0 20 16" aria-hidden="true"><path d="M2 8l6 6L18 2" /></svg><span>${words.say(`reason.${code}`)}</span>
        </li>`,
      )}
      ${misgivings.map(
        ({ code }) =>
          html`<li><span class="but">${words.say('card.pair.but')}</span><span>${words.say(`misgiving.${code}`)}</span></li>`,
      )}
    </ul>
    ${
      unknown.length > 0
        ? html`<p class="soft small">${words.say('card.pair.unknown', { what: listText(unknown, words.language) })}</p>`
        : nothing
    }
    ${easeIn ? easeInSaid(pair, words) : nothing}`;
}

/**
 * Read at a glance from the shelf: one label and the place, then what else is printed on the box, and by what it was
 * judged: a label that looks wrong beside the calculated size is right by its length inside, or the nearest there is.
 * `none` says beside the first box that no box bears that size; the second has no such word.
 */
function boxToFetch({ box, by }: BoxFit, none: string | undefined, first: LabelSystem, words: Words) {
  const { place, innerLength } = box;
  const [label = '', ...others] = printedOn(box, first, words);
  const mm = innerLength === undefined ? '' : words.number(innerLength, Number.isInteger(innerLength) ? 0 : 1);
  const rest = [...others, words.say(`size.by.${by}`, { mm }), ...(none ? [none] : [])].join(' · ');
  return html`<li>
    <strong>${none === undefined ? `${words.say('bench.lines.then')} ` : ''}${label}</strong>
    <strong class="shelf">${words.say('card.fetch.shelf', { place })}</strong>
    <span class="soft">${apart(rest)}</span>
  </li>`;
}

function easeInSaid({ letter, entry }: BenchPair, words: Words) {
  const { easeIn, shoe, part } = entry;
  if (!easeIn) return nothing;
  const said = { reasons: [], misgivings: [], unknown: [], boxes: [], lastPair: false };
  const text = easeInText(
    [
      {
        for: 'all',
        sureness: 'none',
        ifDropped: [],
        pairs: [{ letter, shoe: shoe.id, name: shoe.name, part, easeIn, ...said }],
      },
    ],
    words,
  );
  const weeks = text.weeks.slice(1).map((week, at) => `${text.weeks[0]} ${week}: ${text.rows[0]?.[at + 1] ?? ''}`);
  return html`<details>
    <summary>${text.heading}</summary>
    <p>${easeIn.triggers.map((trigger) => words.say(`easeIn.${trigger}`)).join(' ')}</p>
    ${
      easeIn.minimalistRise === undefined
        ? nothing
        : html`<p class="soft small">${words.say('easeIn.index', { rise: Math.round(easeIn.minimalistRise) })}</p>`
    }
    <p class="small">${text.caption} ${weeks.join(' · ')}</p>
  </details>`;
}

const mustValue = ({ musts, facts }: Profile, must: string): string | number | boolean =>
  musts.find(({ attribute }) => attribute === must)?.value ?? String(facts[must] ?? '');
