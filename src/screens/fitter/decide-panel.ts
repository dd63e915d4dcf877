import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Copy } from '../../card/card.ts';
import { labelSystem } from '../../card/label-system.ts';
import type { Shop } from '../../card/shop.ts';
import { afterTryOn } from '../../shortlist/after-try-on.ts';
import { followUpWeeks } from '../../shortlist/follow-up.ts';
import type { Box } from '../../stock/shoe.ts';
import type { Choice } from '../../visit/visit.ts';
import { rightToLeft } from '../../words/right-to-left.ts';
import type { Words } from '../../words/words.ts';
import type { BenchLine } from '../../worker/bench-line.ts';
import type { LineClient } from '../../worker/line-client.ts';
import type { CardOrder } from '../../worker/line-service.ts';
import { apart } from '../parts/apart.ts';
import { LightElement } from '../parts/light-element.ts';
import { printPage } from '../parts/print-page.ts';
import { savePdf } from '../parts/save-pdf.ts';
import { ChangeEvent } from './bench-event.ts';
import { type BenchPair, pairsOn } from './bench-pairs.ts';
import type { BenchTicket } from './bench-ticket.ts';
import { boxSaid } from './box-said.ts';
import { boxesToChoose } from './boxes-to-choose.ts';
import { cardOrder } from './card-order.ts';
import { feltText } from './felt-text.ts';

/** Where the hold lets nothing be sold, price, size and second thoughts are no reasons. */
const NO_PAIR_STOPPED: readonly string[] = ['clinician-first', 'keeps-old', 'other'];
const NO_PAIR = [
  'keeps-old',
  'other-shop',
  'not-in-size',
  'price',
  'thinks-it-over',
  'clinician-first',
  'other',
] as const;

/** The ticket is to close, and one pair of this box has been sold. */
export interface CloseWish {
  readonly sold?: string;
}

/** The end of a visit: a pair, a second choice, or none and why; then both copies of the card, and the ticket closes. */
@customElement('lw-decide')
export class DecidePanel extends LightElement {
  @property({ attribute: false }) ticket!: BenchTicket;
  @property({ attribute: false }) work!: BenchLine;
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) line!: LineClient;
  @property({ attribute: false }) shop!: Shop;
  /** The hold stops the line: nothing is sold. */
  @property({ type: Boolean }) stopped = false;

  @state() private preview: { readonly copy: Copy; readonly url: string } | undefined;
  @state() private saying = '';
  @state() private closing = false;
  /** The pair taken leaves the stock with the closing, unless somebody says otherwise. */
  @state() private takesOff = true;
  /** Boxes of the pairs that were tried on, whether they were to fetch or not. */
  @state() private stocked: readonly Box[] = [];
  private stockedOf = '';

  override disconnectedCallback(): void {
    this.dropPreview();
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('ticket') && this.preview) this.dropPreview();
    if (changed.has('ticket')) void this.lookUpTried();
  }

  private async lookUpTried(): Promise<void> {
    const shoes = [...new Set(this.ticket.visit.tryOns.map(({ shoe }) => shoe))];
    if (this.stockedOf === shoes.join()) return;
    this.stockedOf = shoes.join();
    this.stocked = (await Promise.all(shoes.map((shoe) => this.line.boxesOf(shoe)))).flat();
  }

  private dropPreview(): void {
    if (this.preview) URL.revokeObjectURL(this.preview.url);
    this.preview = undefined;
  }

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`bench.decide.${key}`, data);
  }

  private choose(choice: Choice): void {
    this.closing = false;
    this.dispatchEvent(new ChangeEvent(({ visit, ...rest }) => ({ ...rest, visit: { ...visit, choice } })));
  }

  private wantsHealth(printHealth: boolean): void {
    this.dispatchEvent(new ChangeEvent(({ visit, ...rest }) => ({ ...rest, visit: { ...visit, printHealth } })));
  }

  private order(copy: Copy): CardOrder {
    return cardOrder(this.ticket, this.work.letters, this.shop, copy, this.words.language);
  }

  private async make(copy: Copy, how: 'preview' | 'print' | 'save'): Promise<void> {
    this.saying = this.say('drawing');
    try {
      if (how === 'save') {
        const name = this.ticket.id.replace(/\s+/g, '-');
        savePdf(await this.line.pdf(this.order(copy)), copy === 'fitter' ? `${name}-fitter.pdf` : `${name}.pdf`);
      } else {
        const page = await this.line.twin(this.order(copy));
        if (how === 'print') printPage(page);
        else {
          this.dropPreview();
          this.preview = { copy, url: URL.createObjectURL(new Blob([page], { type: 'text/html;charset=utf-8' })) };
        }
      }
      this.saying = how === 'save' ? this.words.say('result.saved') : '';
    } catch (reason) {
      console.error(reason);
      this.saying = this.say('failed');
    }
  }

  protected override render() {
    const { choice: made } = this.ticket.visit;
    // A pair chosen before a stop sign came up counts no more.
    const choice = this.stopped && made?.kind === 'pair' ? undefined : made;
    return html`${this.stopped ? html`<p class="said">${this.say('stopped')}</p>` : this.pairs()} ${this.none()}
      ${choice ? this.card(choice) : html`<p class="soft">${this.say(this.stopped || pairsOn(this.work).length === 0 ? 'whyFirst' : 'chooseFirst')}</p>`}`;
  }

  private pairs() {
    const { visit } = this.ticket;
    const { choice } = visit;
    const pairs = pairsOn(this.work);
    const { order, aboutTheSame } = afterTryOn(
      pairs.map(({ entry }) => entry.shoe.id),
      visit.tryOns,
    );
    const sorted = order.flatMap((id) => pairs.find(({ entry }) => entry.shoe.id === id) ?? []);
    const name = (id: string) => pairs.find(({ entry }) => entry.shoe.id === id)?.entry.shoe.name ?? id;
    if (sorted.length === 0) return html`<p class="soft">${this.say('noPairs')}</p>`;
    const chosen = choice?.kind === 'pair' ? choice : undefined;
    return html`<fieldset class="decide">
        <legend><h2>${this.say('chosen')}</h2></legend>
        ${aboutTheSame.map(([one, other]) => html`<p class="soft">${this.words.say('after-try-on.about-the-same', { one: name(one), other: name(other) })}</p>`)}
        ${sorted.flatMap((pair) => boxesToChoose(pair.entry, visit.tryOns, this.stocked).map((box) => this.box(pair, box, chosen)))}
      </fieldset>
      ${
        chosen && sorted.length > 1
          ? html`<fieldset class="decide">
              <legend><h2>${this.say('second')}</h2></legend>
              ${this.secondChoice(undefined, chosen)}
              ${sorted.filter(({ entry }) => entry.shoe.id !== chosen.shoe).map((pair) => this.secondChoice(pair, chosen))}
            </fieldset>`
          : nothing
      }`;
  }

  private box({ letter, entry }: BenchPair, box: Box, chosen: Extract<Choice, { kind: 'pair' }> | undefined) {
    const { shoe } = entry;
    const felt = feltText(box, this.ticket.visit.tryOns, this.words);
    return html`<label class="choice plain"
      ><input
        type="radio"
        name="chosen"
        value=${box.id}
        .checked=${chosen?.box === box.id}
        @change=${() => this.choose({ kind: 'pair', shoe: shoe.id, box: box.id, ...(chosen?.second && chosen.second !== shoe.id ? { second: chosen.second } : {}) })}
      /><span><strong>${letter} ${shoe.name}</strong> ${apart(boxSaid(box, labelSystem(this.ticket.visit), this.words))}
        ${felt ? html`<span class="felt">${felt}</span>` : nothing}</span></label
    >`;
  }

  private secondChoice(pair: BenchPair | undefined, chosen: Extract<Choice, { kind: 'pair' }>) {
    const id = pair?.entry.shoe.id;
    const { second: _second, ...rest } = chosen;
    return html`<label class="choice plain"
      ><input
        type="radio"
        name="second"
        value=${id ?? ''}
        .checked=${chosen.second === id}
        @change=${() => this.choose(id === undefined ? rest : { ...rest, second: id })}
      /><span>${pair ? html`<strong>${pair.letter} ${pair.entry.shoe.name}</strong>` : this.say('noSecond')}</span></label
    >`;
  }

  private none() {
    const { choice } = this.ticket.visit;
    return html`<fieldset class="decide none">
      <legend><h2>${this.say('none')}</h2></legend>
      ${NO_PAIR.filter((reason) => !this.stopped || NO_PAIR_STOPPED.includes(reason)).map(
        (reason) => html`<label class="choice plain"
          ><input
            type="radio"
            name="chosen"
            value=${reason}
            .checked=${choice?.kind === 'none' && choice.reason === reason}
            @change=${() => this.choose({ kind: 'none', reason })}
          /><span>${this.words.say(`lacks.no-sale.${reason}`)}</span></label
        >`,
      )}
    </fieldset>`;
  }

  private card(choice: Choice) {
    const { visit } = this.ticket;
    const entry =
      choice.kind === 'pair' ? pairsOn(this.work).find((pair) => pair.entry.shoe.id === choice.shoe)?.entry : undefined;
    const weeks = followUpWeeks(entry?.easeIn);
    return html`<section class="final">
      <h2>${this.say('card')}</h2>
      <label class="check"
        ><input
          type="checkbox"
          .checked=${visit.printHealth === true}
          @change=${(event: Event) => this.wantsHealth((event.target as HTMLInputElement).checked)}
        /><span>${this.say('printHealth')}</span></label
      >
      ${this.copy('customer')} ${this.copy('fitter')}
      <p role="status">${this.saying}</p>
      ${
        this.preview
          ? html`<iframe class="twin" title=${this.say(`copy-${this.preview.copy}`)} src=${this.preview.url} sandbox="allow-same-origin allow-modals"></iframe>`
          : nothing
      }
      ${choice.kind === 'pair' ? html`<p class="said">${this.say('followUp', { count: weeks })}</p>` : nothing}
      ${this.close()}
    </section>`;
  }

  private copy(copy: Copy) {
    const language = new Intl.DisplayNames([this.words.language], { type: 'language' });
    const { language: code, format } = this.order(copy);
    const paper = copy === 'fitter' ? ` · ${this.words.say(`measure.sheet.paper-${format}`)}` : '';
    // The font of the drawn card has no letters that run right to left: such a card is printed as a page.
    const drawable = !rightToLeft(code);
    const button = (how: 'preview' | 'print' | 'save', main = false) =>
      html`<button type="button" class=${main ? 'button main' : 'button'} data-card=${`${copy}-${how}`} @click=${() => this.make(copy, how)}>
        ${this.say(how)}
      </button>`;
    return html`<div class="line copy" role="group" aria-label=${this.say(`copy-${copy}`)}>
      <p><strong>${this.say(`copy-${copy}`)}</strong> <span class="soft">${language.of(code) ?? code}${paper}</span></p>
      ${drawable ? button('save', copy === 'customer') : nothing}
      ${button('print', !drawable && copy === 'customer')}${button('preview')}
    </div>`;
  }

  /** The box of the chosen pair, where one is sold. */
  private get boxTaken(): string | undefined {
    const { choice } = this.ticket.visit;
    return choice?.kind === 'pair' && !this.stopped ? choice.box : undefined;
  }

  private closeNow(): void {
    const detail: CloseWish = this.takesOff && this.boxTaken ? { sold: this.boxTaken } : {};
    this.dispatchEvent(new CustomEvent('close-ticket', { detail }));
  }

  private close() {
    if (!this.closing) {
      return html`<button type="button" class="button main" data-act="close" @click=${() => (this.closing = true)}>${this.say('close')}</button>`;
    }
    return html`<div class="said">
      <div>
        <p>${this.say('closeAsk')}</p>
        ${
          this.boxTaken === undefined
            ? nothing
            : html`<label class="check"
                ><input
                  type="checkbox"
                  name="takes-off"
                  .checked=${this.takesOff}
                  @change=${(event: Event) => {
                    this.takesOff = (event.target as HTMLInputElement).checked;
                  }}
                /><span>${this.say('takeOff')}</span></label
              >`
        }
        <div class="line">
          <button type="button" class="button main" data-act="close-yes" @click=${() => this.closeNow()}>${this.say('closeYes')}</button>
          <button type="button" class="button" @click=${() => (this.closing = false)}>${this.say('closeNo')}</button>
        </div>
      </div>
    </div>`;
  }
}
