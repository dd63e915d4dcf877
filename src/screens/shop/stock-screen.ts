import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { stockTemplate } from '../../stock/template.ts';
import type { BoxMark } from '../../stock/today.ts';
import { addMarks, markBox, marksOn } from '../../storage/shop-marks.ts';
import type { Store } from '../../storage/store.ts';
import type { Words } from '../../words/words.ts';
import type { LineClient } from '../../worker/line-client.ts';
import type { StockChange, StockSummary } from '../../worker/stock-service.ts';
import { dayOf, momentOf } from '../fitter/day.ts';
import { LightElement } from '../parts/light-element.ts';
import './boxes-panel.ts';
import type { MarkWish } from './boxes-panel.ts';
import { countText } from './count-text.ts';
import { listStyle } from './list-style.ts';
import './load-panel.ts';
import { momentText } from '../parts/moment-text.ts';
import { saveFile } from '../parts/save-file.ts';

/** A list taken into use, with the marks that count for it. */
type Taken = StockChange & { readonly marks: readonly BoxMark[] };

/** The stock of this tablet: what it is and from when, a new list, files to take away, and the boxes one by one. */
@customElement('lw-shop-stock')
export class StockScreen extends LightElement {
  @property({ attribute: false }) store!: Store;
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) line!: LineClient;

  @state() private stock: StockSummary | undefined;
  /** The one that the last swap put aside. */
  @state() private putAside: StockSummary | undefined;
  @state() private marks: readonly BoxMark[] = [];
  @state() private noteCode = '';
  /** Raised when boxes may look different. */
  @state() private turn = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.look();
  }

  private async look(): Promise<void> {
    this.stock = await this.line.stockSummary();
    this.putAside = await this.line.stockBefore();
    await this.use(await marksOn(this.store, dayOf(new Date())).catch(() => []));
  }

  private async use(marks: readonly BoxMark[]): Promise<void> {
    this.marks = marks;
    await this.line.useMarks(marks, dayOf(new Date()));
    this.turn += 1;
  }

  private tell(): void {
    this.dispatchEvent(new CustomEvent('stock-changed', { bubbles: true }));
  }

  private readonly swap = () =>
    this.change('swapped', async () => {
      const { marks, ...change } = await this.line.swapStock();
      // In use already, whatever becomes of its marks.
      this.stock = change.stock;
      return { ...change, marks: await addMarks(this.store, marks, dayOf(new Date())) };
    });

  private readonly goBack = () =>
    this.change('back', async () => ({ ...(await this.line.backToStockBefore()), marks: this.marks }));

  /** Another list comes into use, with the marks that count for it. */
  private async change(note: 'swapped' | 'back', taken: () => Promise<Taken>): Promise<void> {
    try {
      const { stock, marks, beforeLost } = await taken();
      this.stock = stock;
      this.putAside = await this.line.stockBefore();
      await this.use(marks);
      this.noteCode = !this.store.lasting ? 'not-lasting' : beforeLost ? `${note}-alone` : note;
      this.tell();
    } catch (reason) {
      console.error(reason);
      this.noteCode = 'not-kept';
    }
    await this.updateComplete;
    this.querySelector<HTMLElement>('#ask')?.focus();
  }

  private async mark(wish: MarkWish): Promise<void> {
    try {
      await this.use(await markBox(this.store, { ...wish, at: momentOf(new Date()) }));
      this.noteCode = '';
      this.tell();
    } catch (reason) {
      console.error(reason);
      this.noteCode = 'mark-not-kept';
    }
  }

  private async save(what: 'list' | 'copy' | 'template'): Promise<void> {
    const day = dayOf(new Date());
    const style = listStyle(this.words);
    if (what === 'list') saveFile(await this.line.stockList(style), `${this.words.say('shop.file.list')}-${day}.csv`);
    if (what === 'copy') saveFile(await this.line.stockCopy(), `${this.words.say('shop.file.copy')}-${day}.json`);
    if (what === 'template') {
      const template = new Blob(['\uFEFF', stockTemplate(style)], { type: 'text/csv;charset=utf-8' });
      saveFile(template, `${this.words.say('shop.file.template')}.csv`);
    }
  }

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`shop.stock.${key}`, data);
  }

  private wayBack({ asOf, shoes }: StockSummary) {
    const data = { time: momentText(asOf, this.words), models: countText(this.words, 'stock.models', shoes) };
    return html`<div class="line">
      <button type="button" class="button" data-act="stock-before" @click=${this.goBack}>${this.say('before', data)}</button>
    </div>`;
  }

  protected override render() {
    const { words, stock } = this;
    return html`<div class="head">
        <h1 id="ask" tabindex="-1">${this.say('title')}</h1>
        <p class="as-of" data-as-of=${stock?.asOf ?? ''}>
          ${
            stock
              ? html`<strong>${words.say('stock.as-of', { time: momentText(stock.asOf, words) })}</strong> ·
                  ${countText(words, 'stock.models', stock.shoes)} · ${countText(words, 'stock.boxes', stock.boxes)}`
              : this.say('none')
          }
        </p>
        ${this.store.lasting ? nothing : html`<p class="said">${this.say('not-lasting')}</p>`}
        ${this.noteCode ? html`<p class="said" role="status">${this.say(this.noteCode)}</p>` : nothing}
        ${this.putAside ? this.wayBack(this.putAside) : nothing}
      </div>
      <lw-stock-load
        .words=${words}
        .line=${this.line}
        @swap=${this.swap}
        @left=${() => (this.noteCode = 'left')}
        @offered=${() => (this.noteCode = '')}
      ></lw-stock-load>
      <section class="files">
        <h2>${this.say('files')}</h2>
        <div class="line">
          <button type="button" class="button" ?disabled=${!stock} @click=${() => this.save('list')}>${this.say('list')}</button>
          <button type="button" class="button" ?disabled=${!stock} @click=${() => this.save('copy')}>${this.say('copy')}</button>
          <button type="button" class="button" @click=${() => this.save('template')}>${this.say('template')}</button>
        </div>
        <p class="soft small">${this.say('filesWhy')}</p>
      </section>
      ${
        stock
          ? html`<lw-stock-boxes
              .words=${words}
              .line=${this.line}
              .marks=${this.marks}
              .turn=${this.turn}
              @mark=${(event: CustomEvent<MarkWish>) => this.mark(event.detail)}
            ></lw-stock-boxes>`
          : nothing
      }`;
  }
}
