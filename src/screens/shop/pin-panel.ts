import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { readPin } from '../../storage/pin.ts';
import { changePin } from '../../storage/shop-pin.ts';
import type { Store } from '../../storage/store.ts';
import type { Words } from '../../words/words.ts';
import { canKeepPin, derivePin, freshSalt } from '../fitter/derive-pin.ts';
import { LightElement } from '../parts/light-element.ts';

const FIELDS = ['old', 'next', 'again'] as const;

/** A new PIN for the old one. */
@customElement('lw-pin-change')
export class PinPanel extends LightElement {
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) store!: Store;
  @state() private said = '';
  @state() private wrong = false;
  @state() private working = false;

  private say(key: string): string {
    return this.words.say(`shop.pin.${key}`);
  }

  private async submit(event: Event): Promise<void> {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const typed = Object.fromEntries(FIELDS.map((name) => [name, readPin(String(new FormData(form).get(name) ?? ''))]));
    const { old, next, again } = typed;
    if (!old || !('pin' in old)) return this.refuse(this.say('wrong'), form, 'old');
    if (!next || !('pin' in next)) return this.refuse(this.words.say(`bench.pin.${next?.code}`), form, 'next');
    if (!again || !('pin' in again) || again.pin !== next.pin) {
      return this.refuse(this.words.say('bench.pin.not-same'), form, 'again');
    }
    this.working = true;
    try {
      const change = { old: old.pin, next: next.pin, salt: freshSalt(), now: Date.now() };
      const tried = await changePin(this.store, change, derivePin);
      if (tried.is !== 'right') {
        return this.refuse(this.say(tried.is === 'wait' ? 'wait' : 'wrong'), form, 'old');
      }
      form.reset();
      this.wrong = false;
      this.said = this.say('changed');
    } catch (reason) {
      console.error(reason);
      this.refuse(this.words.say('bench.pin.not-kept'), form, 'next');
    } finally {
      this.working = false;
    }
  }

  private refuse(said: string, form: HTMLFormElement, field: string): void {
    this.wrong = true;
    this.said = said;
    form.querySelector<HTMLInputElement>(`[name="${field}"]`)?.select();
  }

  protected override render() {
    if (!canKeepPin()) return nothing;
    return html`<section>
      <h2>${this.say('title')}</h2>
      <form class="pin-change" novalidate @submit=${this.submit}>
        ${FIELDS.map(
          (name) => html`<label class="field"
            ><span>${this.say(name)}</span
            ><input type="text" class="digits" name=${name} inputmode="numeric" autocomplete="off" spellcheck="false" maxlength="40" aria-describedby="pin-said"
          /></label>`,
        )}
        <button type="submit" class="button" ?disabled=${this.working}>${this.say('change')}</button>
      </form>
      <p role="status" id="pin-said" class=${this.wrong ? 'error' : ''}>${this.said}</p>
    </section>`;
  }
}
