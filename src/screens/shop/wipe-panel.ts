import { html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { wipeVisits } from '../../storage/shop-wipe.ts';
import type { Store } from '../../storage/store.ts';
import type { Words } from '../../words/words.ts';
import { LightElement } from '../parts/light-element.ts';

/** Every visit on this tablet wiped, after a second look. */
@customElement('lw-wipe-visits')
export class WipePanel extends LightElement {
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) store!: Store;
  @state() private asking = false;
  @state() private said = '';

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`shop.wipe.${key}`, data);
  }

  private async wipe(): Promise<void> {
    this.asking = false;
    try {
      this.said = this.say('wiped', { count: await wipeVisits(this.store) });
      this.dispatchEvent(new CustomEvent('visits-wiped', { bubbles: true }));
    } catch (reason) {
      console.error(reason);
      this.said = this.say('failed');
    }
  }

  protected override render() {
    return html`<section>
      <h2>${this.say('title')}</h2>
      <p class="soft small">${this.say('why')}</p>
      ${
        this.asking
          ? html`<div class="said" role="status">
              <div>
                <p>${this.say('warning')}</p>
                <div class="foot">
                  <button type="button" class="button" data-act="wipe-yes" @click=${this.wipe}>${this.say('yes')}</button>
                  <button type="button" class="button main" @click=${() => (this.asking = false)}>${this.say('no')}</button>
                </div>
              </div>
            </div>`
          : html`<button
              type="button"
              class="button"
              data-act="wipe"
              @click=${() => {
                this.asking = true;
                this.said = '';
              }}
            >
              ${this.say('wipe')}
            </button>`
      }
      <p role="status">${this.said}</p>
    </section>`;
  }
}
