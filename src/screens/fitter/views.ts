import { html, nothing } from 'lit';
import type { Words } from '../../words/words.ts';

/** The parts of a ticket, in the order of the work. */
const VIEWS = ['profile', 'measure', 'line-up', 'feet', 'decide'] as const;
export type View = (typeof VIEWS)[number];

const MEASURE = import.meta.glob('./measure/measure.ts');
const TRY_ON = import.meta.glob('./try-on/try-on.ts');
/** Parts that are loaded with their view; a build without them leaves the view out. */
export const LOADERS: Readonly<Partial<Record<View, (() => Promise<unknown>) | undefined>>> = {
  measure: MEASURE['./measure/measure.ts'],
  feet: TRY_ON['./try-on/try-on.ts'],
};
/** The parts that this build has. */
export const shownViews = VIEWS.filter(
  (view) => (view !== 'measure' && view !== 'feet') || LOADERS[view] !== undefined,
);

/** The tabs of a ticket's parts. */
export const viewsNav = (shown: View, show: (view: View) => void, words: Words) =>
  html`<nav class="views" aria-label=${words.say('bench.views')}>
    ${shownViews.map(
      (view) => html`<button
        type="button"
        data-view=${view}
        aria-current=${shown === view ? 'page' : nothing}
        @click=${() => show(view)}
      >
        ${words.say(`bench.view.${view}`)}
      </button>`,
    )}
  </nav>`;
