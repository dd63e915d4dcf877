import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Shop } from '../../card/shop.ts';
import type { Flow } from '../../flow/format.ts';
import type { Tables } from '../../flow/options.ts';
import { IDLE_LOCK } from '../../storage/pin.ts';
import { wasClockSetBack, wipeOver } from '../../storage/retention.ts';
import { keptSettings } from '../../storage/shop-settings.ts';
import type { Store } from '../../storage/store.ts';
import { listText } from '../../units/list-text.ts';
import type { Words } from '../../words/words.ts';
import type { LineClient } from '../../worker/line-client.ts';
import { Priced } from '../parts/priced.ts';
import '../look/bench.css';
import '../look/result.css';
import { setDisplay } from '../parts/display.ts';
import { LightElement } from '../parts/light-element.ts';
import { Newest } from '../parts/newest.ts';
import { speechList } from '../parts/speech-list.ts';
import { LANGUAGES } from '../parts/word-files.ts';
import { benchTabs } from './bench-tabs.ts';
import './keys-panel.ts';
import './pin-screen.ts';
import { shortcutOf } from './shortcuts.ts';
import './ticket-work.ts';
import type { Closed, TicketWork } from './ticket-work.ts';
import './tickets-screen.ts';

/** How often the idle lock and the end of the day are looked at, milliseconds. */
const LOOK_EVERY = 15_000;
/** The shop's own screens, loaded when asked for; a build without them leaves their tab out. */
const SHOP = import.meta.glob('../shop/shop.ts')['../shop/shop.ts'];
const SHOP_TAB = 'shop';

/** The fitter's screens: locked behind the shop's PIN, then today's tickets, and each open one in a tab of its own. */
@customElement('lw-bench')
export class Bench extends LightElement {
  @property({ attribute: false }) flow!: Flow;
  @property({ attribute: false }) tables!: Tables;
  @property({ attribute: false }) store!: Store;
  @property({ attribute: false }) line!: LineClient;
  @property({ attribute: false }) shop!: Shop;
  @property({ attribute: false }) loadWords!: (language: string, all: boolean) => Promise<Words>;
  /** The address a card's code came in, opened after the PIN. */
  @property() code = '';
  /** A ticket of this tablet, opened after the PIN. */
  @property() ticket = '';

  @state() private words: Words | undefined;
  /** The customers' language, which the kiosk goes back to. */
  private readonly home = document.documentElement.lang;
  private readonly priced = new Priced();
  private readonly newestWords = new Newest<Words>();
  @state() private initials = '';
  @state() private openIds: readonly string[] = [];
  @state() private at = 'tickets';
  @state() private keys = true;
  @state() private noteCode = '';
  /** Open tickets whose time was over, for the note that says so. */
  @state() private wiped: readonly string[] = [];
  private lastTouch = Date.now();
  private timer: ReturnType<typeof setInterval> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.start();
    this.timer = setInterval(() => void this.look(), LOOK_EVERY);
    document.addEventListener('keydown', this.pressed);
    document.addEventListener('pointerdown', this.touched, { passive: true });
  }

  override disconnectedCallback(): void {
    clearInterval(this.timer);
    document.removeEventListener('keydown', this.pressed);
    document.removeEventListener('pointerdown', this.touched);
    super.disconnectedCallback();
  }

  private async start(): Promise<void> {
    await this.speak(this.shop.language);
    const kept = await this.store.get<{ readonly keys: boolean }>('shop', 'bench').catch(() => undefined);
    this.keys = kept?.keys ?? true;
    await this.look();
    this.focusHeading();
  }

  /** Locks after a long rest, and lets go of visits whose day is over. A clock set back counts as a long rest. */
  private async look(): Promise<void> {
    const rest = Date.now() - this.lastTouch;
    if (this.initials && (rest > IDLE_LOCK || rest < 0)) this.lock(rest < 0 ? 'clock-lock' : 'idle');
    const { keepMinutes } = await keptSettings(this.store);
    const gone = await wipeOver(this.store, new Date(), keepMinutes).catch(() => []);
    const shown = gone.filter((id) => this.openIds.includes(id));
    for (const id of shown) this.shut(id);
    if (await wasClockSetBack(this.store).catch(() => false)) this.noteCode = 'clock-back';
    else if (shown.length > 0) {
      this.noteCode = 'day-over';
      this.wiped = shown;
    }
  }

  private readonly touched = (): void => {
    this.lastTouch = Date.now();
  };

  private readonly pressed = (event: KeyboardEvent): void => {
    this.touched();
    if (!this.keys || !this.initials) return;
    const shortcut = shortcutOf(event);
    if (!shortcut) return;
    event.preventDefault();
    if (shortcut === 'tickets') this.go('tickets');
    else [...this.querySelectorAll<TicketWork>('lw-ticket')].find(({ active }) => active)?.act(shortcut);
  };

  private unlocked(initials: string): void {
    this.initials = initials;
    this.noteCode = '';
    this.touched();
    if (this.ticket) this.openTicket(this.ticket);
    this.ticket = '';
    this.focusHeading();
  }

  private lock(noteCode = ''): void {
    this.initials = '';
    this.noteCode = noteCode;
    this.focusHeading();
  }

  private leave(): void {
    setDisplay({ language: this.home });
    this.dispatchEvent(new CustomEvent('leave'));
  }

  private openTicket(id: string): void {
    this.openIds = [...new Set([...this.openIds, id])];
    this.go(id);
  }

  private shut(id: string): void {
    this.openIds = this.openIds.filter((each) => each !== id);
    if (this.at === id) this.go('tickets');
  }

  private go(to: string): void {
    if (to === SHOP_TAB) void SHOP?.();
    this.at = to;
    this.noteCode = '';
    this.code = '';
    window.scrollTo(0, 0);
    this.focusHeading();
  }

  /** The visit is wiped before the list is shown again. */
  private async closed({ id, noteCode }: Closed): Promise<void> {
    this.openIds = this.openIds.filter((each) => each !== id);
    await this.look();
    this.go('tickets');
    this.noteCode = noteCode;
  }

  private focusHeading(): void {
    void this.updateComplete.then(() =>
      requestAnimationFrame(() => this.querySelector<HTMLElement>('#ask')?.focus({ preventScroll: true })),
    );
  }

  private async speak(language: string): Promise<void> {
    const words = await this.newestWords.of(this.loadWords(language, true));
    if (!words) return;
    this.words = words;
    setDisplay({ language, direction: words.direction });
  }

  private async switchKeys(on: boolean): Promise<void> {
    this.keys = on;
    await this.store.put('shop', 'bench', { keys: on }).catch(() => undefined);
  }

  protected override render() {
    const words = this.priced.of(this.words, this.flow, this.shop.currency);
    if (!words) return nothing;
    return html`<div class="bench">
      <header class="bench-head">
        <span class="hole" aria-hidden="true"></span>
        <p class="bench-name">
          <strong>${words.say('bench.title')}</strong>
          <span>${this.shop.name}${this.initials ? ` · ${this.initials}` : ''}</span>
        </p>
        ${this.shop.demo === true ? html`<p class="demo-mark">${words.say('screen.demo')}</p>` : nothing}
        ${this.initials ? benchTabs(this.openIds, this.at, words, (to) => this.go(to), SHOP ? SHOP_TAB : undefined) : nothing} ${this.controls(words)}
      </header>
      <main class="bench-page" data-at=${this.initials ? this.at : 'locked'}>
        ${this.initials ? this.place(words) : this.locked(words)}
      </main>
    </div>`;
  }

  private note(words: Words): string {
    if (!this.noteCode) return '';
    const tickets = listText(this.wiped, words.language, 'and');
    return words.say(`bench.note.${this.noteCode}`, { tickets });
  }

  private locked(words: Words) {
    return html`<lw-pin
      .words=${words}
      .store=${this.store}
      .note=${this.note(words)}
      @unlocked=${(event: CustomEvent<string>) => this.unlocked(event.detail)}
      @forgotten=${() => {
        this.openIds = [];
        this.at = 'tickets';
      }}
      @leave=${() => this.leave()}
    ></lw-pin>`;
  }

  private controls(words: Words) {
    return html`<div class="bench-acts">
      ${speechList(words, LANGUAGES, (language) => this.speak(language))}
      ${
        this.initials
          ? html`<button
              type="button"
              class="link"
              data-act="lock"
              @click=${() => {
                this.lock();
                this.leave();
              }}
            >
              ${words.say('bench.lock')}
            </button>`
          : nothing
      }
    </div>`;
  }

  private place(words: Words) {
    const tickets =
      this.at === 'tickets'
        ? html`<lw-tickets
          .words=${words}
          .store=${this.store}
          .flow=${this.flow}
          .tables=${this.tables}
          .line=${this.line}
          .code=${this.code}
          .home=${this.home}
          .note=${this.note(words)}
          @open-ticket=${(event: CustomEvent<string>) => this.openTicket(event.detail)}
        ></lw-tickets>
        <lw-keys
            .words=${words}
            .on=${this.keys}
            @keys=${(event: CustomEvent<boolean>) => this.switchKeys(event.detail)}
          ></lw-keys>`
        : nothing;
    return html`${tickets} ${this.at === SHOP_TAB ? this.shopScreens(words) : nothing}
    ${repeat(
      this.openIds,
      (id) => id,
      (id) => html`<lw-ticket
          .ticketId=${id}
          .active=${id === this.at}
          .store=${this.store}
          .flow=${this.flow}
          .tables=${this.tables}
          .words=${words}
          .line=${this.line}
          .shop=${this.shop}
          .initials=${this.initials}
          @ticket-closed=${(event: CustomEvent<Closed>) => this.closed(event.detail)}
        ></lw-ticket>`,
    )}`;
  }

  private shopScreens(words: Words) {
    return html`<lw-shop
      .store=${this.store}
      .words=${words}
      .line=${this.line}
      .shop=${this.shop}
      @back=${() => this.go('tickets')}
      @shop-changed=${(event: CustomEvent<Shop>) => {
        const { language } = event.detail;
        if (language !== this.shop.language) void this.speak(language);
        this.shop = event.detail;
      }}
      @visits-wiped=${() => {
        this.openIds = [];
      }}
    ></lw-shop>`;
  }
}
