import { html } from 'lit';

/** Drawing units. */
const LENGTH = 200;
const HEIGHT = 16;

/** One bar of a plot, to stand in a table beside its number, which says the same to readers of text. `share` is 0 to 1. */
export function bar(share: number) {
  return html`<svg class="bar-plot" viewBox="0 0 ${LENGTH} ${HEIGHT}" preserveAspectRatio="none" aria-hidden="true" focusable="false">
    <line x1="0.5" y1="0" x2="0.5" y2=${HEIGHT} />
    <rect x="0" y="2" width=${Math.max(2, Math.round(share * LENGTH))} height=${HEIGHT - 4} />
  </svg>`;
}
