import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Finding } from '../../units/result.ts';
import type { Words } from '../../words/words.ts';
import type { LineClient } from '../../worker/line-client.ts';
import type { StockOffer } from '../../worker/stock-service.ts';
import { momentOf } from '../fitter/day.ts';
import { LightElement } from '../parts/light-element.ts';
import { momentText } from '../parts/moment-text.ts';
import { saveFile } from '../parts/save-file.ts';
import { columnsSaid } from './columns-said.ts';
import { countText } from './count-text.ts';
import { findingText } from './finding-text.ts';
import { listStyle } from './list-style.ts';

/** Hundredths are enough for eyes; each report would else draw the page anew. */
const STEPS = 100;

/** A new list: chosen or dropped, read with progress, its findings shown by line, then swapped in or left. */
@customElement('lw-stock-load')
export class LoadPanel extends LightElement {
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) line!: LineClient;

  @state() private file: File | undefined;
  @state() private offer: StockOffer | undefined;
  @state() private share = 0;
  @state() private failed = false;
  @state() private over = false;

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`shop.load.${key}`, data);
  }

  /** When the list was made, as far as the file knows; a file from the future was made now. */
  private madeAt(file: File): string {
    return momentOf(new Date(Math.min(file.lastModified, Date.now())));
  }

  private async take(file: File | undefined): Promise<void> {
    if (!file || (this.file && !this.offer)) return;
    this.file = file;
    this.offer = undefined;
    this.failed = false;
    this.share = 0;
    this.dispatchEvent(new CustomEvent('offered'));
    try {
      const offer = await this.line.offerStock(file, this.madeAt(file), (share) => {
        this.share = Math.floor(share * STEPS) / STEPS;
      });
      this.offer = offer;
    } catch (reason) {
      console.error(reason);
      this.file = undefined;
      this.failed = true;
    }
    await this.updateComplete;
    this.querySelector<HTMLElement>('.offer h2')?.focus();
  }

  private done(how: 'swap' | 'left'): void {
    if (how === 'left') void this.line.leaveStock();
    this.file = undefined;
    this.offer = undefined;
    this.dispatchEvent(new CustomEvent(how));
  }

  private async saveFindings(): Promise<void> {
    const list = await this.line.findingsList(this.words.language, listStyle(this.words));
    saveFile(list, `${this.words.say('shop.file.findings')}.csv`);
  }

  private drop(event: DragEvent): void {
    event.preventDefault();
    this.over = false;
    void this.take(event.dataTransfer?.files[0]);
  }

  protected override render() {
    if (this.offer && this.file) return this.offered(this.offer, this.file);
    if (this.file) return this.reading(this.file);
    return html`<section
      class="drop"
      ?data-over=${this.over}
      @dragover=${(event: DragEvent) => {
        event.preventDefault();
        this.over = true;
      }}
      @dragleave=${() => (this.over = false)}
      @drop=${this.drop}
    >
      <h2>${this.say('title')}</h2>
      <p>${this.say('lead')}</p>
      <label class="button file"
        ><input
          type="file"
          class="visually-hidden"
          accept=".csv,.txt,.tsv,.json,text/csv,text/plain,application/json"
          @change=${(event: Event) => this.take((event.target as HTMLInputElement).files?.[0])}
        /><span>${this.say('choose')}</span></label
      >
      ${this.failed ? html`<p class="said error" role="alert">${this.say('failed')}</p>` : nothing}
      ${columnsSaid(this.words)}
    </section>`;
  }

  private reading(file: File) {
    return html`<section class="drop">
      <h2>${this.say('title')}</h2>
      <label class="field" for="stock-progress">${this.say('reading', { file: file.name })}</label>
      <progress id="stock-progress" max="1" value=${this.share}></progress>
      <p role="status" class="visually-hidden">${this.say('reading', { file: file.name })}</p>
    </section>`;
  }

  private offered(offer: StockOffer, file: File) {
    const { words } = this;
    const refusals = offer.findings.filter(({ severity }) => severity === 'error');
    const notes = offer.findings.filter(({ severity }) => severity !== 'error');
    const figures: readonly (readonly [string, number, boolean])[] = [
      ['models', offer.shoes, true],
      ['boxes', offer.boxes, true],
      ['fresh', offer.fresh, offer.usable],
      ['refused', offer.refused, true],
      ['marks', offer.marks, offer.isCopy && offer.usable],
    ];
    return html`<section class="offer">
      <h2 tabindex="-1">${this.say(offer.isCopy ? 'offerCopy' : 'offer', { file: file.name })}</h2>
      <dl class="offer-figures">
        ${figures
          .filter(([, , shown]) => shown)
          .map(
            ([what, count]) =>
              html`<div data-figure=${what}><dt>${this.say(what)}</dt><dd>${words.number(count)}</dd></div>`,
          )}
        <div><dt>${this.say('asOf')}</dt><dd>${momentText(offer.asOf, words)}</dd></div>
      </dl>
      ${this.listed('error', refusals)} ${this.listed('note', notes)}
      ${
        offer.findings.length > 0
          ? html`<div class="line">
              ${offer.more > 0 ? html`<p>${countText(words, 'shop.load.more', offer.more)}</p>` : nothing}
              <button type="button" class="button" @click=${() => this.saveFindings()}>${this.say('saveFindings')}</button>
            </div>`
          : html`<p>${this.say('clean')}</p>`
      }
      ${offer.usable && offer.gone > 0 ? html`<p class="said" data-gone>${countText(words, 'shop.load.gone', offer.gone)}</p>` : nothing}
      <p>${this.say(offer.usable ? 'nothingYet' : 'unusable')}</p>
      <div class="foot">
        ${
          offer.usable
            ? html`<button type="button" class="button main" data-act="swap" @click=${() => this.done('swap')}>${this.say('swap')}</button>`
            : nothing
        }
        <button type="button" class="button" data-act="leave" @click=${() => this.done('left')}>${this.say('leave')}</button>
      </div>
    </section>`;
  }

  private listed(severity: Finding['severity'], findings: readonly Finding[]) {
    if (findings.length === 0) return nothing;
    return html`<h3>${countText(this.words, `shop.load.${severity}s`, findings.length)}</h3>
      <ul class="findings" data-severity=${severity} tabindex="0" aria-label=${countText(this.words, `shop.load.${severity}s`, findings.length)}>
        ${findings.map((finding) => html`<li>${findingText(finding, this.words)}</li>`)}
      </ul>`;
  }
}
