import { html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { stripsOf, todayMeasured } from '../../card/strips.ts';
import { stripsText } from '../../card/text/strips-text.ts';
import type { Profile } from '../../profile/profile.ts';
import type { Visit } from '../../visit/visit.ts';
import type { Words } from '../../words/words.ts';
import { LightElement } from '../parts/light-element.ts';
import '../parts/strips.ts';
import type { BenchPair } from './bench-pairs.ts';

/** Two to four pairs on one set of tape measures, the most important need first. */
@customElement('lw-compare')
export class ComparePanel extends LightElement {
  @property({ attribute: false }) pairs: readonly BenchPair[] = [];
  @property({ attribute: false }) profile!: Profile;
  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) words!: Words;

  protected override render() {
    const shown = this.pairs.map(({ letter, entry }) => ({ letter, shoe: entry.shoe }));
    const strips = stripsOf(this.profile.needs, shown, this.profile.facts, true);
    return html`<div class="compare">
      <p>${this.pairs.map(({ letter, entry }) => `${letter} ${entry.shoe.name}`).join(' · ')}</p>
      <lw-strips .strips=${stripsText({ strips, todayMeasured: todayMeasured(this.visit) }, this.words)} .most=${strips.length}></lw-strips>
    </div>`;
  }
}
