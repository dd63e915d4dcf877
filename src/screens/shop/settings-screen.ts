import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Shop } from '../../card/shop.ts';
import { keepSettings, keptSettings, type Settings } from '../../storage/shop-settings.ts';
import type { Store } from '../../storage/store.ts';
import type { Words } from '../../words/words.ts';
import type { LineClient } from '../../worker/line-client.ts';
import { LightElement } from '../parts/light-element.ts';
import './pin-panel.ts';
import './settings-file-panel.ts';
import type { SettingsFile } from '../../storage/shop-settings.ts';
import './settings-form.ts';
import './wipe-panel.ts';

/** What the shop sets: about itself, languages, card, kit, times; the PIN; visits to wipe; all of it as a file. */
@customElement('lw-shop-settings')
export class SettingsScreen extends LightElement {
  @property({ attribute: false }) store!: Store;
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) line!: LineClient;
  @property({ attribute: false }) shop!: Shop;
  @state() private settings: Settings | undefined;
  @state() private noteCode = '';

  override connectedCallback(): void {
    super.connectedCallback();
    void keptSettings(this.store).then((settings) => {
      this.settings = settings;
    });
  }

  private async keep({ shop, settings }: SettingsFile): Promise<void> {
    const next = settings ?? this.settings;
    if (!next) return;
    try {
      await keepSettings(this.store, shop, next);
    } catch (reason) {
      console.error(reason);
      this.noteCode = 'not-kept';
      return;
    }
    this.shop = shop;
    this.settings = next;
    this.noteCode = this.store.lasting ? 'kept' : 'not-lasting';
    this.dispatchEvent(new CustomEvent('shop-changed', { detail: shop, bubbles: true }));
    this.dispatchEvent(new CustomEvent('settings-changed', { detail: next, bubbles: true }));
  }

  protected override render() {
    const { words, settings } = this;
    if (!settings) return nothing;
    const say = (key: string) => words.say(`shop.settings.${key}`);
    const taken = (event: CustomEvent<SettingsFile>) => this.keep(event.detail);
    return html`<div class="head">
        <h1 id="ask" tabindex="-1">${say('title')}</h1>
      </div>
      <lw-settings-form
        .words=${words}
        .line=${this.line}
        .shop=${this.shop}
        .settings=${settings}
        .note=${this.noteCode ? say(this.noteCode) : ''}
        @settings=${taken}
        @touched=${() => (this.noteCode = '')}
      ></lw-settings-form>
      <lw-settings-file .words=${words} .shop=${this.shop} .settings=${settings} @settings=${taken}></lw-settings-file>
      <lw-pin-change .words=${words} .store=${this.store}></lw-pin-change>
      <lw-wipe-visits .words=${words} .store=${this.store}></lw-wipe-visits>`;
  }
}
