import { html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Words } from '../../words/words.ts';
import { LightElement } from '../parts/light-element.ts';

/** Why, in one tap or in words. Fires `reason` once, or `kept` when nothing is to change. */
@customElement('lw-reason')
export class ReasonForm extends LightElement {
  /** Ids; their words are `bench.reason.<id>`. */
  @property({ attribute: false }) reasons: readonly string[] = [];
  @property({ attribute: false }) words!: Words;

  private give(reason: string): void {
    if (reason.trim() !== '') this.dispatchEvent(new CustomEvent('reason', { detail: reason.trim() }));
  }

  private typed(event: Event): void {
    event.preventDefault();
    this.give(String(new FormData(event.target as HTMLFormElement).get('reason') ?? ''));
  }

  protected override render() {
    const say = (key: string) => this.words.say(`bench.${key}`);
    return html`<ul class="reason-taps">
        ${this.reasons.map(
          (id) => html`<li>
            <button type="button" class="button" data-reason=${id} @click=${() => this.give(id)}>${say(`reason.${id}`)}</button>
          </li>`,
        )}
      </ul>
      <form class="line" @submit=${this.typed}>
        <label class="field"
          ><span>${say('edit.other')}</span><input type="text" name="reason" maxlength="200" autocomplete="off"
        /></label>
        <button type="submit" class="button">${say('edit.save')}</button>
      </form>
      <button type="button" class="button" @click=${() => this.dispatchEvent(new CustomEvent('kept'))}>${say('edit.keep')}</button>`;
  }
}
