import { html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Shop } from '../../card/shop.ts';
import type { Store } from '../../storage/store.ts';
import type { Words } from '../../words/words.ts';
import type { LineClient } from '../../worker/line-client.ts';
import '../look/shop.css';
import { LightElement } from '../parts/light-element.ts';
import './lacks-screen.ts';
import './settings-screen.ts';
import './stock-screen.ts';

const PLACES = ['stock', 'lacks', 'measuring', 'settings'] as const;
type Place = (typeof PLACES)[number];

/** The shop's own screens, behind the PIN: stock, what the range lacks, how shoes are measured, settings. */
@customElement('lw-shop')
export class ShopScreens extends LightElement {
  @property({ attribute: false }) store!: Store;
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) line!: LineClient;
  @property({ attribute: false }) shop!: Shop;
  @state() private at: Place = 'stock';

  protected override firstUpdated(): void {
    this.focusHeading();
  }

  private async go(to: Place): Promise<void> {
    if (to === 'measuring') await import('./measuring-screen.ts');
    this.at = to;
    await this.updateComplete;
    window.scrollTo(0, 0);
    this.focusHeading();
  }

  /** A screen that first looks things up shows its heading a few frames later. */
  private focusHeading(framesLeft = 60): void {
    requestAnimationFrame(() => {
      const heading = this.querySelector<HTMLElement>('#ask');
      if (heading) heading.focus({ preventScroll: true });
      else if (framesLeft > 0) this.focusHeading(framesLeft - 1);
    });
  }

  protected override render() {
    const { words } = this;
    return html`<nav class="views" aria-label=${words.say('shop.parts')}>
        ${PLACES.map(
          (place) => html`<button
            type="button"
            data-place=${place}
            aria-current=${this.at === place ? 'page' : 'false'}
            @click=${() => this.go(place)}
          >
            ${words.say(`shop.part.${place}`)}
          </button>`,
        )}
      </nav>
      ${this.place()}`;
  }

  private place() {
    const { store, words, line, shop } = this;
    switch (this.at) {
      case 'stock':
        return html`<lw-shop-stock .store=${store} .words=${words} .line=${line}></lw-shop-stock>`;
      case 'lacks':
        return html`<lw-shop-lacks .store=${store} .words=${words} .line=${line}></lw-shop-lacks>`;
      case 'measuring':
        return html`<lw-shop-measuring .words=${words}></lw-shop-measuring>`;
      case 'settings':
        return html`<lw-shop-settings .store=${store} .words=${words} .line=${line} .shop=${shop}></lw-shop-settings>`;
    }
  }
}
