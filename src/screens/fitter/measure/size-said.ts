import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { labelLine } from '../../../card/text/label-line.ts';
import type { SizeAdvice } from '../../../sizing/advice.ts';
import { doubtWord } from '../../../sizing/size-notes.ts';
import type { Words } from '../../../words/words.ts';
import { LightElement } from '../../parts/light-element.ts';
import { findingText } from './measure-text.ts';

/** In large type: the customer beside the fitter is to read it too. */
const ALOUD = ['left-longer', 'right-longer', 'look-where-it-bends', 'measure-again'];
/** Told beside the fields they are about. */
const AT_FIELDS = [
  'feet-far-apart',
  'girth-below-width',
  'ball-beyond-toe',
  'heel-wider-than-ball',
  'width-beyond-length',
  'long-for-junior',
  'short-for-shelf',
];

/** What the measures lead to: the size as it stands, how sure it is, and what disagrees. */
@customElement('lw-size-said')
export class SizeSaid extends LightElement {
  @property({ attribute: false }) advice: SizeAdvice | undefined;
  @property({ attribute: false }) words!: Words;

  protected override render() {
    const { advice, words } = this;
    const heading = html`<h2>${words.say('measure.size.heading')}</h2>`;
    if (advice === undefined) return heading;
    const told = advice.findings.filter(({ code }) => !AT_FIELDS.includes(code));
    const aloud = told.filter(({ code }) => ALOUD.includes(code));
    return html`${heading}
      <div role="status" class="aloud">
        ${aloud.map((finding) => html`<p data-code=${finding.code}>${findingText(finding, words)}</p>`)}
      </div>
      <dl>${this.figures(advice)}</dl>
      ${advice.footLength === undefined ? nothing : html`<p>${words.say(`size.doubt.${doubtWord(advice.doubt)}`)}</p>`}
      ${told
        .filter((finding) => !aloud.includes(finding))
        .map((finding) => html`<p class="soft" data-code=${finding.code}>${findingText(finding, words)}</p>`)}
      ${this.also(advice)}`;
  }

  private figures(advice: SizeAdvice) {
    const { words } = this;
    const row = (key: string, value: string) =>
      html`<div data-row=${key}>
        <dt>${words.say(`measure.size.${key}`)}</dt>
        <dd>${value}</dd>
      </div>`;
    const range = ([from, to]: readonly [number, number]): string =>
      words.say('card.size.range', { from: tenths(from, words), to: tenths(to, words) });
    const { footLength, doubt, difference, innerLength, labels, width, archDifference, growth } = advice;
    return [
      row('from', words.say(`size.from.${advice.from}`)),
      ...(footLength === undefined
        ? []
        : [
            row('foot', words.say('card.size.mm', { value: tenths(footLength, words) })),
            row('doubt', range([footLength - doubt, footLength + doubt])),
          ]),
      ...(difference === undefined
        ? []
        : [row('difference', words.say('card.size.mm', { value: tenths(difference, words) }))]),
      row('room', range(advice.toeRoom)),
      ...(innerLength ? [row('inner', range(innerLength))] : []),
      ...(labels
        ? [
            row('labels', labelLine(labels, words)),
            row('mondopoint', labels.mondopoint),
            ...(labels.ukChild === undefined || labels.usChild === undefined
              ? []
              : [row('child', words.say('measure.size.child-line', { uk: labels.ukChild, us: labels.usChild }))]),
          ]
        : []),
      ...(width
        ? [
            row('width', words.say(`size.width.${width.word}`)),
            row('width-z', words.say(`measure.size.z-${width.by}`, { z: signed(width.z, words) })),
            ...(width.letter ? [row('letter', width.letter)] : []),
          ]
        : []),
      ...(archDifference === undefined
        ? []
        : [row('arch', words.say('card.size.mm', { value: signed(archDifference, words) }))]),
      ...(growth
        ? [
            row('growth', words.say('measure.size.per-month', { mm: tenths(growth.perMonth, words) })),
            row('months', words.say('measure.size.months-range', { from: growth.months[0], to: growth.months[1] })),
          ]
        : []),
    ];
  }

  private also({ also = [] }: SizeAdvice) {
    const { words } = this;
    if (also.length === 0) return nothing;
    return html`<section class="also">
      <h3>${words.say('measure.size.also')}</h3>
      <ul>
        ${also.map(
          ({ system, label, why }) => html`<li>
            ${words.say('size.also.say', { system: words.say(`unit.${system}`), label })}
            <span class="soft">${words.say(`size.also.${why}`)}</span>
          </li>`,
        )}
      </ul>
    </section>`;
  }
}

function signed(value: number, words: Words): string {
  const sign = value > 0 ? '+' : value < 0 ? '−' : '';
  return `${sign}${words.number(Math.abs(value), 1)}`;
}

function tenths(value: number, words: Words): string {
  return words.number(Math.round(value * 10) / 10);
}
