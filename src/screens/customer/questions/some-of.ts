import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { SomeOf } from '../../../flow/format.ts';
import type { Offered } from '../../parts/offered.ts';
import { QuestionElement } from './question-element.ts';

/** Tick as many as fit, then continue. `alone` choices clear the rest, and a most-so-many question drops the oldest tick. */
@customElement('lw-some-of')
export class SomeOfQuestion extends QuestionElement<SomeOf> {
  @state() private chosen: readonly string[] = [];

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('question')) this.chosen = Array.isArray(this.answer) ? (this.answer as string[]) : [];
  }

  private toggle(option: Offered, on: boolean): void {
    const others = this.chosen.filter((id) => id !== option.id);
    if (!on) this.chosen = others;
    else if (option.alone) this.chosen = [option.id];
    else {
      const alone = new Set(this.offered.filter((other) => other.alone).map((other) => other.id));
      const kept = [...others.filter((id) => !alone.has(id)), option.id];
      this.chosen = kept.slice(-(this.question.most ?? kept.length));
    }
  }

  /** In the question's own order, so that the order of taps changes nothing. */
  private get value(): readonly string[] {
    return this.offered.map((option) => option.id).filter((id) => this.chosen.includes(id));
  }

  protected override render() {
    const { most } = this.question;
    return html`<fieldset>
        <legend class="visually-hidden">${this.say('ask')}</legend>
        <ul class="choices list">
          ${repeat(
            this.offered,
            (option) => option.id,
            (option) => html`<li>
              <label class="choice">
                <input
                  type="checkbox"
                  name=${option.id}
                  .checked=${this.chosen.includes(option.id)}
                  @change=${(event: Event) => this.toggle(option, (event.target as HTMLInputElement).checked)}
                />
                <span>${option.label}</span>
              </label>
            </li>`,
          )}
        </ul>
      </fieldset>
      <p role="status" class="soft">
        ${most ? this.words.say('screen.chosenOf', { count: this.value.length, most }) : nothing}
      </p>
      ${this.foot(html`
        <button type="button" class="button main" ?disabled=${this.value.length === 0} @click=${() => this.give(this.value)}>
          ${this.words.say('screen.continue')}
        </button>
        ${this.value.length === 0 ? html`<p class="soft">${this.words.say('screen.pickFirst')}</p>` : nothing}`)}`;
  }
}
