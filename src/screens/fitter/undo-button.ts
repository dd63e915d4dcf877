import { html, nothing } from 'lit';
import type { Words } from '../../words/words.ts';

/**
 * A part of the bench with steps of its own. It fires `last-step` with the name of the one that `undo` takes back,
 * or with an empty one.
 */
export interface OwnSteps extends HTMLElement {
  undo(): void;
}

/**
 * The one Undo of a ticket, at the same place on every tab. Short to the eye, so that it moves nothing; who listens
 * hears what it takes back, where that has a name.
 */
export const undoButton = (can: boolean, what: string, undo: () => void, words: Words) =>
  html`<button
    type="button"
    class="button undo"
    aria-label=${what === '' ? nothing : words.say('bench.undo-what', { what })}
    ?disabled=${!can}
    @click=${undo}
  >
    ${words.say('bench.undo')}
  </button>`;
