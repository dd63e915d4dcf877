import { html, nothing } from 'lit';
import type { LabelSystem } from '../../stock/shoe.ts';
import type { Words } from '../../words/words.ts';
import { apart } from '../parts/apart.ts';
import type { BenchPair } from './bench-pairs.ts';
import { boxSaid } from './box-said.ts';

/** The pairs at a glance, the box to fetch of each, and what the last change moved. */
export const glance = (pairs: readonly BenchPair[], first: LabelSystem, moved: readonly string[], words: Words) =>
  html`<section class="glance" aria-label=${words.say('bench.lines.title')}>
    <ol ?hidden=${pairs.length === 0}>
      ${pairs.map(
        ({ letter, entry: { shoe, boxes } }) => html`<li>
          <span class="letter">${letter}</span> <span class="name">${shoe.name}</span>
          ${boxes[0] ? html`<span class="soft small">${apart(boxSaid(boxes[0].box, first, words))}</span>` : nothing}
        </li>`,
      )}
    </ol>
    <div role="status" class="moved">
      ${moved.length > 0 ? html`<ul>${moved.map((text) => html`<li>${text}</li>`)}</ul>` : nothing}
    </div>
  </section>`;
