import { html, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { StripsText, StripText } from '../../card/text/card-text.ts';
import { LightElement } from './light-element.ts';

/** The tape's length in drawing units; the places on it are shares of that. */
const LENGTH = 600;
const EDGE = 16;
const RADIUS = 13;
const at = (share: number): number => EDGE + share * (LENGTH - 2 * EDGE);

/** Letters that would touch are stacked: how many stand below each. */
function stacked<T extends { readonly at: number }>(marks: readonly T[]): readonly (T & { readonly level: number })[] {
  const placed: (T & { readonly level: number })[] = [];
  for (const mark of [...marks].sort((a, b) => a.at - b.at)) {
    const near = placed.filter((other) => Math.abs(at(other.at) - at(mark.at)) < 2 * RADIUS + 2);
    placed.push({ ...mark, level: firstFree(near.map(({ level }) => level)) });
  }
  return placed;
}

const firstFree = (taken: readonly number[]): number => {
  let level = 0;
  while (taken.includes(level)) level += 1;
  return level;
};

/** Range strips: a tape measure for each property, the wanted stretch as a stitched band, pairs as letters. Said in words too. */
@customElement('lw-strips')
export class Strips extends LightElement {
  @property({ attribute: false }) strips!: StripsText;
  /** How many to show; the rest are on the card. */
  @property({ type: Number }) most = 5;

  protected override render() {
    const { strips } = this;
    const rows = strips.rows.slice(0, this.most);
    if (rows.length === 0) return '';
    return html`<section class="strips">
      <h2>${strips.heading}</h2>
      <ul>
        ${rows.map((row) => this.row(row))}
      </ul>
      <p class="legend soft" aria-hidden="true">
        <span class="key band"></span>${strips.legend.band}
        ${strips.legend.pair ? html`<span class="key letter"></span>${strips.legend.pair}` : ''}
        ${strips.legend.today ? html`<span class="key ring"></span>${strips.legend.today}` : ''}
      </p>
    </section>`;
  }

  private row({ strip, name, low, high, missing, spoken }: StripText) {
    const marks = stacked(strip.pairs);
    const levels = Math.max(0, ...marks.map(({ level }) => level));
    const base = 34 + levels * (2 * RADIUS + 1);
    const [from, to] = strip.band;
    const width = Math.max(8, at(to) - at(from));
    return html`<li class="strip">
      <span class="strip-name">${name}</span>
      <span class="strip-tape">
        <span class="ends soft" aria-hidden="true"><span>${low}</span><span>${high}</span></span>
        <svg viewBox="0 0 ${LENGTH} ${base + 8}" role="img" aria-label=${spoken}>
          ${Array.from({ length: 21 }, (_, tick) => svg`<line class="tick" x1=${at(tick / 20)} x2=${at(tick / 20)} y1=${base - (tick % 5 === 0 ? 14 : 7)} y2=${base} />`)}
          <rect class="band" x=${at(from)} y="5" width=${width} height=${base - 5} />
          <line class="edge" x1="0" x2=${LENGTH} y1=${base} y2=${base} />
          ${strip.today === undefined ? '' : svg`<circle class="ring" cx=${at(strip.today)} cy=${base} r="7" />`}
          ${marks.map(
            ({ at: share, letter, level }) => svg`<g class="mark">
              <circle cx=${at(share)} cy=${base - 16 - level * (2 * RADIUS + 1)} r=${RADIUS} />
              <text x=${at(share)} y=${base - 10 - level * (2 * RADIUS + 1)}>${letter}</text>
            </g>`,
          )}
        </svg>
        ${missing ? html`<span class="soft missing">${missing}</span>` : ''}
      </span>
    </li>`;
  }
}
