import { html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { unsafeHTML } from 'lit/directives/unsafe-html.js';
import { measuringPage } from '../../stock/how-to-measure.ts';
import type { Words } from '../../words/words.ts';
import typeStyles from '../look/type.css?url';
import { LightElement } from '../parts/light-element.ts';
import { printPage } from '../parts/print-page.ts';
import printStyles from './measuring-print.css?url';

/** "How to measure a shoe without a laboratory", to read and to print. Its words and drawings are our own files. */
@customElement('lw-shop-measuring')
export class MeasuringScreen extends LightElement {
  @property({ attribute: false }) words!: Words;

  private print(): void {
    const { words } = this;
    const styles = [typeStyles, printStyles]
      .map((style) => `<link rel="stylesheet" href="${new URL(style, document.baseURI).href}">`)
      .join('');
    const title = words.say('stock.how-to-measure.title');
    printPage(
      `<!doctype html><html lang="${words.language}" dir="${words.direction}"><head><meta charset="utf-8"><title>${title}</title>${styles}</head><body>${measuringPage(words)}</body></html>`,
    );
  }

  protected override render() {
    const page = measuringPage(this.words).replace('<h1>', '<h1 id="ask" tabindex="-1">');
    return html`<div class="foot">
        <button type="button" class="button" @click=${this.print}>${this.words.say('shop.measuring.print')}</button>
      </div>
      ${unsafeHTML(page)}`;
  }
}
