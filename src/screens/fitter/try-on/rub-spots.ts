import { html, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import above from '../../../drawings/feet/above.svg?raw';
import { RUB_SPOTS, type RubSpot } from '../../../visit/fit-notes.ts';
import type { Words } from '../../../words/words.ts';
import { LightElement } from '../../parts/light-element.ts';

const SIDES = ['left', 'right'] as const;
type Side = (typeof SIDES)[number];
const WIDTH = 112;
const OUTLINE = above.replace(/^<svg[^>]*>|<\/svg>\s*$/g, '');

/** Middle of each spot on the left foot; the right foot is the same turned over. */
const SPOTS: Readonly<Record<RubSpot, readonly [x: number, y: number]>> = {
  'big-toe': [72, 22],
  toes: [46, 38],
  'little-toe': [26, 50],
  'ball-inner': [82, 62],
  'ball-outer': [22, 80],
  instep: [52, 78],
  arch: [74, 104],
  'ankle-inner': [70, 136],
  'ankle-outer': [31, 128],
  heel: [50, 158],
};

/** Where a pair rubs: two feet to tap, and a list that says and does the same. Fires `rubs` with `left-heel` and the like. */
@customElement('lw-rub-spots')
export class RubSpots extends LightElement {
  @property({ attribute: false }) rubs: readonly string[] = [];
  @property({ attribute: false }) words!: Words;

  private toggle(id: string): void {
    const rubs = this.rubs.includes(id) ? this.rubs.filter((each) => each !== id) : [...this.rubs, id];
    this.dispatchEvent(new CustomEvent<readonly string[]>('rubs', { detail: rubs }));
  }

  protected override render() {
    return html`<div class="rub-spots">
      <div class="feet" aria-hidden="true">${SIDES.map((side) => this.foot(side))}</div>
      ${SIDES.map((side) => this.list(side))}
    </div>`;
  }

  private foot(side: Side) {
    const turned = side === 'right' ? `matrix(-1 0 0 1 ${WIDTH} 0)` : 'translate(0 0)';
    return html`<figure>
      <svg viewBox="0 0 ${WIDTH} 172" role="presentation">
        <g
          class="outline"
          fill="none"
          stroke="currentColor"
          stroke-width="3"
          stroke-linecap="round"
          stroke-linejoin="round"
          transform=${turned}
        >
          ${unsafeSVG(OUTLINE)}
        </g>
        ${RUB_SPOTS.map((spot) => this.spot(side, spot))}
      </svg>
      <figcaption>${this.words.say(`measure.${side}`)}</figcaption>
    </figure>`;
  }

  private spot(side: Side, spot: RubSpot) {
    const id = `${side}-${spot}`;
    const on = this.rubs.includes(id);
    const [left, y] = SPOTS[spot];
    const x = side === 'left' ? left : WIDTH - left;
    return svg`<g class="spot" data-spot=${id} data-on=${String(on)} @click=${() => this.toggle(id)}>
      <circle class="touch" cx=${x} cy=${y} r="13" />
      <circle class="ring" cx=${x} cy=${y} r="7" />
      ${on ? svg`<path class="tick" d=${`M${x - 3.5} ${y} l2.8 3.2 l4.6 -6`} />` : ''}
    </g>`;
  }

  private list(side: Side) {
    return html`<fieldset>
      <legend>${this.words.say(`measure.${side}`)}</legend>
      <ul>
        ${RUB_SPOTS.map((spot) => {
          const id = `${side}-${spot}`;
          return html`<li>
            <label class="choice plain"
              ><input type="checkbox" name=${`rub-${id}`} .checked=${this.rubs.includes(id)} @change=${() => this.toggle(id)} /><span
                >${this.words.say(`try-on.spot.${spot}`)}</span
              ></label
            >
          </li>`;
        })}
      </ul>
    </fieldset>`;
  }
}
