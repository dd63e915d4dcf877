import { html, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { BodyMapQuestion } from '../../../flow/format.ts';
import { LightElement } from '../../parts/light-element.ts';

type View = BodyMapQuestion['regions'][number]['view'];

/** One line each, 3 px at this size: legs from the front, legs from behind, the sole of a foot. */
const OUTLINE: Readonly<Record<View, readonly string[]>> = {
  front: [
    'M58 8 C50 22 46 38 47 56 C48 84 58 104 58 128 C57 150 52 162 55 186 C57 206 62 226 62 246 C60 254 44 262 40 270 C39 276 44 278 52 278 L76 278 C81 278 81 272 80 264 C79 244 84 218 85 194 C86 176 84 160 86 140 C88 116 93 92 95 66',
    'M132 8 C140 22 144 38 143 56 C142 84 132 104 132 128 C133 150 138 162 135 186 C133 206 128 226 128 246 C130 254 146 262 150 270 C151 276 146 278 138 278 L114 278 C109 278 109 272 110 264 C111 244 106 218 105 194 C104 176 106 160 104 140 C102 116 97 92 95 66',
    'M66 128 Q72 135 79 128 M111 128 Q118 135 124 128',
  ],
  back: [
    'M58 8 C50 22 46 38 47 60 C49 86 57 104 57 128 C54 150 50 164 54 188 C57 208 65 226 65 248 C64 258 60 266 58 274 C60 279 78 279 80 274 C80 262 80 256 80 246 C82 222 88 200 87 180 C86 162 86 148 87 130 C89 110 94 96 95 72',
    'M132 8 C140 22 144 38 143 60 C141 86 133 104 133 128 C136 150 140 164 136 188 C133 208 125 226 125 248 C126 258 130 266 132 274 C130 279 112 279 110 274 C110 262 110 256 110 246 C108 222 102 200 103 180 C104 162 104 148 103 130 C101 110 96 96 95 72',
    'M95 14 L95 72 M52 62 Q72 76 95 66 M95 66 Q118 76 138 62',
  ],
  foot: [
    'M74 66 C62 70 54 84 55 102 C56 122 68 136 68 160 C68 184 62 200 64 226 C66 252 80 266 98 266 C118 266 130 250 130 228 C130 196 142 168 144 136 C145 116 142 98 134 86',
    'M58 60 C52 40 60 20 74 20 C88 20 92 36 88 56 C86 66 64 72 58 60',
    'M92 48 C90 34 96 26 104 27 C111 28 112 40 109 52 C106 60 94 58 92 48 M112 54 C112 42 118 35 124 38 C130 41 129 52 125 60 C121 66 112 62 112 54 M127 66 C129 55 134 51 139 54 C144 57 142 67 138 73 C133 78 126 74 127 66 M137 82 C140 73 145 70 149 74 C152 79 149 86 145 90 C140 93 135 89 137 82',
  ],
};

/** Middle of each region's spot, in its view. A region this table does not know is in the list only. */
const SPOTS: Readonly<Record<string, readonly [number, number]>> = {
  hip: [52, 34],
  knee: [70, 122],
  shin: [70, 176],
  'ankle-outer': [56, 244],
  'ankle-inner': [84, 244],
  'lower-back': [95, 30],
  calf: [70, 166],
  achilles: [73, 232],
  toes: [112, 44],
  'big-toe-joint': [68, 90],
  ball: [106, 100],
  arch: [78, 158],
  'outer-foot': [128, 162],
  heel: [97, 232],
};

/** Drawings to tap. The list beside them says and does the same, so screen readers and keyboards are sent there. */
@customElement('lw-body-figure')
export class BodyFigure extends LightElement {
  @property({ attribute: false }) regions: BodyMapQuestion['regions'] = [];
  @property({ attribute: false }) marked: readonly string[] = [];
  @property({ attribute: false }) label: (id: string) => string = (id) => id;
  @property({ attribute: false }) viewLabel: (view: string) => string = (view) => view;

  protected override render() {
    const views = [...new Set(this.regions.map(({ view }) => view))];
    return html`<div class="figures" aria-hidden="true">${views.map((view) => this.figure(view))}</div>`;
  }

  private figure(view: View) {
    return html`<figure>
      <svg viewBox="30 0 130 286" role="presentation">
        ${OUTLINE[view].map((path) => svg`<path class="outline" d=${path} />`)}
        ${this.regions
          .filter((region) => region.view === view && SPOTS[region.id])
          .map(({ id }) => this.spot(id, SPOTS[id] as readonly [number, number]))}
      </svg>
      <figcaption>${this.viewLabel(view)}</figcaption>
    </figure>`;
  }

  private spot(id: string, [x, y]: readonly [number, number]) {
    const on = this.marked.includes(id);
    return svg`<g class="spot" data-on=${String(on)} @click=${() => this.dispatchEvent(new CustomEvent('region', { detail: id }))}>
      <title>${this.label(id)}</title>
      <circle class="touch" cx=${x} cy=${y} r="20" />
      <circle class="ring" cx=${x} cy=${y} r="11" />
      ${on ? svg`<path class="tick" d=${`M${x - 5} ${y} l4 4.5 l7 -9`} />` : ''}
    </g>`;
  }
}
