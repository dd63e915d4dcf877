import { html, nothing } from 'lit';
import type { Profile } from '../../profile/profile.ts';
import type { Words } from '../../words/words.ts';

/** Without a size no box can be named: said, with the way to measuring. Fires `measure` on the element it stands in. */
export function measureFirst({ size }: Pick<Profile, 'size'>, words: Words, go: () => void) {
  if (size.footLength !== undefined) return nothing;
  return html`<div class="said measure-first">
    <p>${words.say('bench.lines.measureFirst')}</p>
    <button type="button" class="button" data-act="measure" @click=${go}>${words.say('bench.view.measure')}</button>
  </div>`;
}
