import { html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { CardFacts } from '../../card/card.ts';
import type { Shop } from '../../card/shop.ts';
import { textOf } from '../../card/text/text-of.ts';
import type { Visit } from '../../visit/visit.ts';
import type { Words } from '../../words/words.ts';
import type { LineClient } from '../../worker/line-client.ts';
import type { CardOrder } from '../../worker/line-service.ts';
import { dayOf } from '../fitter/day.ts';
import { LightElement } from '../parts/light-element.ts';
import { printPage } from '../parts/print-page.ts';
import { savePdf } from '../parts/save-pdf.ts';
import { canSharePdf, sharePdf } from '../parts/share-pdf.ts';
import '../look/result.css';
import './result-screen.ts';

type Step = 'working' | 'result' | 'ask-health' | 'ask-hand' | 'card' | 'handed' | 'failed';

/** From the finished interview to the card in hand: result, health notes or not, card, and handing over. */
@customElement('lw-outcome')
export class Outcome extends LightElement {
  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) line!: LineClient;
  @property({ attribute: false }) shop!: Shop;
  /** `maple 14`. */
  @property() ticket = '';
  /** A listed screen state may start further on. */
  @property({ attribute: false }) step: Step = 'working';

  @state() private facts: CardFacts | undefined;
  @state() private twin = '';
  @state() private printHealth = false;
  /** What came of the last tap on the card. */
  @state() private saying: '' | 'saved' | 'shareFailed' = '';
  /** The fitter has the answers about health too. */
  private given = false;
  private drawn: Promise<Uint8Array> | undefined;
  private stepBefore: Step = 'result';

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.step === 'working') void this.work();
  }

  /** A card on the screen follows a change of language; what it says stays the same. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('words');
    if (this.step === 'card' && before && before.language !== this.words.language) void this.drawTwin();
  }

  private async drawTwin(): Promise<void> {
    this.drawn = undefined;
    try {
      this.twin = await this.line.twin(this.order(this.printHealth));
    } catch (reason) {
      this.fail(reason);
    }
  }

  private order(printHealth: boolean): CardOrder {
    return {
      visit: { ...this.visit, printHealth },
      shop: this.shop,
      date: dayOf(new Date()),
      ticket: this.ticket,
      origin: location.origin + location.pathname.replace(/[^/]*$/, '').replace(/\/$/, ''),
      copy: 'customer',
      format: this.shop.cardFormat,
      language: this.words.language,
    };
  }

  /** The screen may show the customer everything that follows from their own answers; the paper asks first. */
  private async work(): Promise<void> {
    try {
      const { facts, hold } = await this.line.facts(this.order(true));
      this.facts = facts;
      this.tell('worked', hold);
      this.go('result');
    } catch (reason) {
      this.fail(reason);
    }
  }

  private fail(reason: unknown): void {
    console.error(reason);
    this.go('failed');
  }

  private go(step: Step): void {
    this.step = step;
    window.scrollTo(0, 0);
    void this.updateComplete.then(() => this.querySelector<HTMLElement>('#ask')?.focus({ preventScroll: true }));
  }

  /** Asks about health notes only where saying yes would change the card. */
  private async wantCard(): Promise<void> {
    try {
      const without = await this.line.facts(this.order(false));
      const differs = said(without.facts) !== said(this.facts);
      if (differs) this.go('ask-health');
      else await this.makeCard(false);
    } catch (reason) {
      this.fail(reason);
    }
  }

  private async makeCard(printHealth: boolean): Promise<void> {
    this.printHealth = printHealth;
    this.saying = '';
    await this.drawTwin();
    if (this.step !== 'failed') this.go('card');
  }

  private get fileName(): string {
    return `${this.ticket.replace(/\s+/g, '-')}.pdf`;
  }

  /** Drawn once: a share sheet opens only shortly after a tap, and a second tap finds the PDF ready. */
  private pdf(): Promise<Uint8Array> {
    this.drawn ??= this.line.pdf(this.order(this.printHealth));
    return this.drawn;
  }

  private async save(): Promise<void> {
    try {
      savePdf(await this.pdf(), this.fileName);
      this.saying = 'saved';
    } catch (reason) {
      this.fail(reason);
    }
  }

  private async share(): Promise<void> {
    this.saying = '';
    try {
      await sharePdf(await this.pdf(), this.fileName);
    } catch (reason) {
      console.error(reason);
      this.saying = 'shareFailed';
    }
  }

  private tell(what: 'worked' | 'change' | 'hand' | 'done' | 'bench', detail?: unknown): void {
    this.dispatchEvent(new CustomEvent(what, { detail }));
  }

  private askHand(): void {
    this.stepBefore = this.step;
    this.go('ask-hand');
  }

  protected override render() {
    switch (this.step) {
      case 'working':
        return html`<div class="head"><h1 id="ask" tabindex="-1" role="status">${this.words.say('screen.working')}</h1></div>`;
      case 'result':
        return this.result();
      case 'ask-health':
        return this.ask('health', [
          { words: 'healthNo', act: () => this.makeCard(false) },
          { words: 'healthYes', act: () => this.makeCard(true) },
        ]);
      case 'ask-hand':
        return this.ask('hand', [
          { words: 'handYes', act: () => this.hand() },
          { words: 'handNo', act: () => this.go(this.stepBefore) },
        ]);
      case 'card':
        return this.card();
      case 'handed':
        return this.handed();
      case 'failed':
        return html`<div class="head">
          <h1 id="ask" tabindex="-1">${this.say('failed')}</h1>
        </div>
        <div class="foot near">${this.button('change', () => this.tell('change'))}${this.button('done', () => this.tell('done'))}</div>`;
    }
  }

  private say(key: string): string {
    return this.words.say(`result.${key}`, { ticket: this.ticket });
  }

  private button(words: string, act: () => unknown, main = false, label = words) {
    return html`<button type="button" class=${main ? 'button main' : 'button'} data-act=${words} @click=${act}>
      ${this.say(label)}
    </button>`;
  }

  private result() {
    if (!this.facts) return nothing;
    const said = textOf(this.facts, this.words);
    // What the paper would say of printed health notes does not hold for the screen.
    const text = { ...said, health: this.facts.healthAsked ? [] : said.health.slice(0, 1) };
    // Nothing here is worth doing before the call.
    const callFirst = text.cautions.some(({ level }) => level === 'now');
    return html`<lw-result class="page-in" .text=${text} .words=${this.words}></lw-result>
      <div class="foot sticky">
        ${this.button('card', () => this.wantCard(), !callFirst)}${this.button('hand', () => this.askHand())}
        ${this.button('change', () => this.tell('change'))}
      </div>`;
  }

  private ask(topic: 'health' | 'hand', choices: readonly { words: string; act: () => unknown }[]) {
    return html`<div class="head page-in">
        <h1 id="ask" tabindex="-1">${this.say(`${topic}Title`)}</h1>
        <p class="lead">${this.say(`${topic}Text`)}</p>
      </div>
      <div class="foot near">
        ${choices.map(({ words, act }, index) => this.button(words, act, index === 0 && topic === 'hand'))}
      </div>`;
  }

  private card() {
    // The font of the drawn card has no letters that run right to left: such a card is printed as a page.
    const drawable = this.words.direction !== 'rtl';
    return html`<div class="head">
        <h1 id="ask" tabindex="-1">${this.say('cardTitle')}</h1>
        <p class="lead">${this.say(this.facts?.outcome === 'refer' ? 'cardLeadRefer' : 'cardLead')}</p>
      </div>
      <div class="foot card-acts">
        ${this.button('print', () => printPage(this.twin), true)}
        ${drawable ? this.button('save', () => this.save()) : nothing}
        ${drawable && canSharePdf() ? this.button('share', () => this.share()) : nothing}
        ${this.button('hand', () => this.askHand())}${this.button('done', () => this.go('handed'))}
        ${this.button('back', () => this.go('result'))}
        <p role="status">${this.saying && this.say(this.saying)}</p>
      </div>
      <iframe class="twin" title=${this.say('preview')} src=${blobOf(this.twin)} sandbox="allow-same-origin" @load=${whole}></iframe>`;
  }

  private hand(): void {
    this.given = true;
    this.tell('hand', this.printHealth);
    this.go('handed');
  }

  private handed() {
    return html`<div class="head page-in">
        <h1 id="ask" tabindex="-1">${this.say('handedTitle')}</h1>
        <p class="lead">${this.say('handedText')} <strong class="called">${this.ticket}</strong></p>
        <p>${this.say(this.given ? 'handedSees' : 'keptSees')}</p>
        <p>${this.say('handedFree')}</p>
      </div>
      <div class="foot near">
        ${this.button('done', () => this.tell('done'), true, 'next')}
        <button type="button" class="link" data-act="bench" @click=${() => this.tell('bench')}>
          ${this.words.say('bench.openHere')}
        </button>
      </div>`;
  }
}

/** Shows the whole card: a frame that scrolls inside a page that scrolls is a trap for a thumb. */
function whole(event: Event): void {
  const frame = event.target as HTMLIFrameElement;
  const height = frame.contentDocument?.documentElement.scrollHeight;
  if (height) frame.height = String(height + 8);
}

/** What a card says apart from whether it may say it, and from who ticks the tasks: that tells nothing of anybody. */
const said = (facts: CardFacts | undefined): string =>
  JSON.stringify({
    ...facts,
    healthNotes: undefined,
    code: undefined,
    tasks: { ...facts?.tasks, needsFitter: undefined },
  });

let lastBlob: { readonly page: string; readonly url: string } | undefined;
/** One address per page of HTML, so that rendering again does not load it again. */
function blobOf(page: string): string {
  if (lastBlob?.page !== page) {
    if (lastBlob) URL.revokeObjectURL(lastBlob.url);
    lastBlob = { page, url: URL.createObjectURL(new Blob([page], { type: 'text/html;charset=utf-8' })) };
  }
  return lastBlob.url;
}
