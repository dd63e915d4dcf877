import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Shop } from '../../card/shop.ts';
import type { Words } from '../../words/words.ts';
import type { LineClient } from '../../worker/line-client.ts';
import type { CardOrder } from '../../worker/line-service.ts';
import { dayOf } from '../fitter/day.ts';
import { LightElement } from '../parts/light-element.ts';
import { printPage } from '../parts/print-page.ts';
import { saveFile } from '../parts/save-file.ts';

/**
 * A card of an invented visit as this shop would print it: its words on screen, its paper as a PDF to save, or printed
 * as a page where the language runs right to left, which the PDF's font cannot.
 */
@customElement('lw-card-preview')
export class CardPreview extends LightElement {
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) line!: LineClient;
  /** As the form stands, saved or not. */
  @property({ attribute: false }) shop!: Shop;
  @state() private shown = '';
  @state() private saying = '';

  override disconnectedCallback(): void {
    this.drop();
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('shop')) this.drop();
  }

  private drop(): void {
    if (this.shown) URL.revokeObjectURL(this.shown);
    this.shown = '';
  }

  private async order(): Promise<CardOrder> {
    const { SAMPLE_TICKET, sampleVisit } = await import('./sample-visit.ts');
    const { shop, words } = this;
    return {
      visit: sampleVisit(words.language),
      shop,
      date: dayOf(new Date()),
      ticket: SAMPLE_TICKET,
      origin: location.origin,
      copy: 'customer',
      format: shop.cardFormat,
      language: words.language,
    };
  }

  private async make(how: 'show' | 'save' | 'print'): Promise<void> {
    this.saying = this.say('drawing');
    try {
      const order = await this.order();
      if (how === 'save') {
        const pdf = await this.line.pdf(order);
        saveFile(new Blob([pdf as Uint8Array<ArrayBuffer>], { type: 'application/pdf' }), `${order.format}.pdf`);
      } else {
        const page = await this.line.twin(order);
        if (how === 'print') printPage(page);
        else {
          this.drop();
          this.shown = URL.createObjectURL(new Blob([page], { type: 'text/html;charset=utf-8' }));
        }
      }
      this.saying = '';
    } catch (reason) {
      console.error(reason);
      this.saying = this.say('failed');
    }
  }

  private say(key: string): string {
    return this.words.say(`shop.preview.${key}`);
  }

  protected override render() {
    return html`<div class="line">
        <button type="button" class="button" data-act="preview" @click=${() => this.make('show')}>${this.say('show')}</button>
        ${
          this.words.direction === 'rtl'
            ? html`<button type="button" class="button" data-act="preview-print" @click=${() => this.make('print')}>${this.words.say('result.print')}</button>`
            : html`<button type="button" class="button" data-act="preview-pdf" @click=${() => this.make('save')}>${this.say('pdf')}</button>`
        }
      </div>
      <p role="status">${this.saying}</p>
      ${this.shown ? html`<iframe class="preview" src=${this.shown} title=${this.say('title')}></iframe>` : nothing}`;
  }
}
