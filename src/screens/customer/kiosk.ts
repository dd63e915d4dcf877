import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { createActor } from 'xstate';
import type { Shop } from '../../card/shop.ts';
import type { Flow } from '../../flow/format.ts';
import type { Tables } from '../../flow/options.ts';
import type { IdleTimes } from '../../interview/idle.ts';
import { FRESH, type InterviewState } from '../../interview/interview-state.ts';
import { interviewMachine } from '../../interview/machine.ts';
import type { Store } from '../../storage/store.ts';
import { freshVisit } from '../../visit/fresh-visit.ts';
import type { Hold } from '../../visit/visit.ts';
import { withoutHealth } from '../../visit/without-health.ts';
import type { Words } from '../../words/words.ts';
import { ActorController } from '../parts/actor-controller.ts';
import { setDisplay } from '../parts/display.ts';
import { EchoGuard } from '../parts/echo-guard.ts';
import { LightElement } from '../parts/light-element.ts';
import { offeredLanguages } from '../parts/offered-languages.ts';
import { PageTurn } from '../parts/page-turn.ts';
import { Priced } from '../parts/priced.ts';
import { quiet } from '../parts/quiet.ts';
import { LANGUAGES } from '../parts/word-files.ts';
import { Ahead, type Rest } from './ahead.ts';
import { ChangedAnswer } from './changed-answer.ts';
import { IDLE_TIMES } from './idle-watch.ts';
import { interviewPage } from './interview-page.ts';
import { LettingGo } from './letting-go.ts';
import { loadLaterScreens } from './question-screen.ts';
import { type LoadWords, Spoken } from './spoken.ts';
import './stub.ts';
import { VisitKeeper } from './visit-keeper.ts';
import './welcome-screen.ts';

/** The customer's kiosk, from welcome to the card. It shows what the interview's machine says and keeps no view of its own. */
@customElement('lw-kiosk')
export class Kiosk extends LightElement {
  @property({ attribute: false }) flow!: Flow;
  @property({ attribute: false }) tables!: Tables;
  @property({ attribute: false }) store!: Store;
  /** Opens the store where it is not given: the welcome does not wait for it. */
  @property({ attribute: false }) openStore: (() => Promise<Store>) | undefined;
  @property({ attribute: false }) loadWords!: LoadWords;
  /** What only the result needs, loaded while the customer answers. */
  @property({ attribute: false }) loadRest!: () => Promise<Rest>;
  /** The shop's name and whether it is a demo: asked for once the first screen stands. */
  @property({ attribute: false }) loadShop!: () => Promise<Shop>;
  /** Where to open instead of the welcome: for the page that shows every screen state. */
  @property({ attribute: false }) opening: InterviewState | undefined;
  @property({ attribute: false }) idleTimes: IdleTimes = IDLE_TIMES;

  @state() private noteCode = '';
  @state() private resumable: InterviewState | undefined;
  @state() private shop: Shop | undefined;
  /** The fitter's screens are in front: with a card's code from the address, or a ticket of this tablet, or neither. */
  @state() private bench: { readonly code: string; readonly ticket: string } | undefined;

  private keeper: VisitKeeper | undefined;
  private booted: Promise<void> = Promise.resolve();
  private machine: ReturnType<typeof interviewMachine> | undefined;
  private readonly turn = new PageTurn(this, () => this.placeNow);
  private readonly changed = new ChangedAnswer();
  private readonly priced = new Priced();
  private readonly spoken = new Spoken(this, () => this.loadWords);
  private readonly ahead = new Ahead(
    this,
    this.spoken,
    () => this.loadRest(),
    () => {
      this.noteCode = 'went-wrong';
    },
  );
  private readonly interview = new ActorController<ReturnType<typeof interviewMachine>>(
    this,
    ({ context }) => this.keeper?.save(context),
    () => {
      this.noteCode = 'went-wrong';
    },
  );

  constructor() {
    super();
    new EchoGuard(this, () => this.pageNow);
    new LettingGo(this, () => this.store);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.booted = this.boot();
    void this.settleIn();
  }

  /** Changes whenever other things stand on the screen than before: a step of the interview, or of what follows it. */
  private get pageNow(): string {
    const place = this.placeNow;
    const shown = this.querySelectorAll('#ask, .inner, .confirm p, .stub-foot p');
    return [place, ...[...shown].map(({ textContent }) => textContent)].join(' ');
  }

  private async boot(): Promise<void> {
    const opening = this.openStore?.();
    await this.spoken.speak(document.documentElement.lang);
    if (opening) this.store = await opening;
    this.machine = interviewMachine(this.flow, this.tables);
    this.keeper = new VisitKeeper(
      this.store,
      this.flow,
      this.tables,
      () => this.spoken.language,
      () => this.shop?.language ?? this.spoken.home,
    );
    const { interview, note, language } = await this.keeper.left();
    this.resumable = interview;
    this.noteCode = note ?? this.keeper.standingNote;
    if (this.opening) {
      this.keeper.begin();
      await this.keeper.count();
    }
    this.begin(this.opening ?? FRESH);
    if (LANGUAGES.includes(language ?? '')) await this.spoken.speak(language ?? '');
  }

  /** The store is open and the machine runs. */
  get ready(): Promise<void> {
    return this.booted;
  }

  /** What can wait until the welcome stands. */
  private async settleIn(): Promise<void> {
    await this.booted;
    if (!this.opening) await quiet();
    await loadLaterScreens();
    this.shop = await this.loadShop().catch(() => undefined);
    if (location.hash.startsWith('#c=')) void this.openBench(location.hash);
    (await import('../parts/hold-back.ts')).holdBack(this);
  }

  /** The code leaves the address at once, so that no later customer finds it there. */
  private async openBench(code: string, ticket = ''): Promise<void> {
    if (code) history.replaceState(null, '', location.pathname + location.search);
    await Promise.all([import('../fitter/bench.ts'), this.ahead.prepare()]);
    if (this.ahead.rest) this.bench = { code, ticket };
  }

  /** The fitter stands by: the visit leaves this screen, and its ticket waits behind the PIN. */
  private async toBench(): Promise<void> {
    const ticket = this.ticketText;
    await this.wipe();
    await this.openBench('', ticket);
  }

  /** The shop changed what it says of itself: so do this screen and every card from now on. */
  private retell(shop: Shop): void {
    this.shop = shop;
    this.ahead.retell(shop);
  }

  /** The language goes with the draft, also where no answer follows. */
  private async speak(language: string): Promise<void> {
    await this.spoken.speak(language);
    await this.keeper?.respeak();
    const context = this.interview.actor?.getSnapshot().context;
    if (context) this.keeper?.save(context);
    this.requestUpdate();
  }

  private begin(from: InterviewState): void {
    if (!this.machine) return;
    this.changed.forget();
    this.interview.follow(createActor(this.machine, { input: from }));
  }

  private async start(): Promise<void> {
    await this.booted;
    this.resumable = undefined;
    this.noteCode = this.keeper?.standingNote ?? '';
    this.keeper?.begin();
    this.interview.actor?.send({ type: 'start' });
    await this.keeper?.count();
    // The first record went without its ticket: the page came before the counting.
    const context = this.interview.actor?.getSnapshot().context;
    if (context) this.keeper?.save(context);
    this.requestUpdate();
    void this.ahead.prepare();
  }

  private resume(): void {
    const from = this.resumable;
    this.resumable = undefined;
    if (from) this.begin(from);
    void this.ahead.prepare();
  }

  /** Ends this visit on this screen: the draft is flushed, then cleared, and the next customer finds the welcome. */
  private async wipe(noteCode = ''): Promise<void> {
    // Whatever becomes of the store, the next customer must not find this one's answers on the screen.
    await this.keeper?.end();
    this.resumable = undefined;
    this.noteCode = noteCode || (this.keeper?.standingNote ?? '');
    this.begin(FRESH);
    // The next customer may not need the large text of this one either.
    setDisplay({ text: 'normal', contrast: 'normal' });
    await this.spoken.speakHome();
  }

  /** The bench spoke the fitters' language; the page's own comes back for the next customer. */
  private leaveBench(): void {
    this.bench = undefined;
    this.turn.forget();
    void this.spoken.speak(document.documentElement.lang);
  }

  private get placeNow(): string {
    return this.interview.actor?.getSnapshot().context.at ?? '';
  }

  protected override render() {
    const words = this.priced.of(this.spoken.words, this.flow, this.shop?.currency);
    const { rest } = this.ahead;
    // The welcome stands before the store is open and the machine made.
    const context = this.interview.actor?.getSnapshot().context ?? (this.opening ? undefined : FRESH);
    if (!words || !context) return nothing;
    if (this.bench && rest) {
      return html`<lw-bench
        .flow=${this.flow}
        .tables=${this.tables}
        .store=${this.store}
        .loadWords=${this.loadWords}
        .line=${rest.line}
        .shop=${rest.shop}
        .code=${this.bench.code}
        .ticket=${this.bench.ticket}
        @shop-changed=${(event: CustomEvent<Shop>) => this.retell(event.detail)}
        @leave=${() => this.leaveBench()}
      ></lw-bench>`;
    }
    return html`<div class="tag">
        <lw-stub
          .flow=${this.flow}
          .words=${words}
          .at=${context.at}
          .ticket=${context.at === 'welcome' ? undefined : this.keeper?.ticket}
          .demo=${this.shop?.demo === true}
          .languages=${offeredLanguages(this.shop)}
          @language=${(event: CustomEvent<string>) => this.speak(event.detail)}
          @start-over=${() => this.wipe()}
        ></lw-stub>
        <main class="page" data-place=${context.at}>${this.place(context, words)}</main>
      </div>
      ${
        // Answers that wait to be carried on are watched too: whoever gave them may be gone.
        context.at === 'welcome' && !this.resumable
          ? nothing
          : html`<lw-idle-watch .words=${words} .times=${this.idleTimes} @wiped=${() => this.wipe('idle')}></lw-idle-watch>`
      }`;
  }

  private place(context: InterviewState, words: Words) {
    if (context.at === 'welcome') {
      return html`<lw-welcome
        .words=${words}
        .shopName=${this.shop?.name ?? ''}
        .languages=${offeredLanguages(this.shop)}
        .resumable=${this.resumable ? this.ticketText : undefined}
        .note=${this.noteCode}
        @begin=${() => this.start()}
        @resume=${() => this.resume()}
        @staff=${() => this.openBench('')}
        @language=${(event: CustomEvent<string>) => this.spoken.speak(event.detail)}
      ></lw-welcome>`;
    }
    if (context.at === 'finished') return this.outcome(context, words);
    return interviewPage(context, {
      flow: this.flow,
      tables: this.tables,
      words,
      changed: this.changed,
      send: (event) => this.interview.actor?.send(event),
    });
  }

  private outcome(context: InterviewState, words: Words) {
    const { rest } = this.ahead;
    if (!rest) {
      void this.ahead.prepare();
      return html`<div class="head"><h1 id="ask" tabindex="-1" role="status">${words.say('screen.working')}</h1></div>`;
    }
    const visit = freshVisit(this.flow, words.language, context.answers);
    return html`<lw-outcome
      .visit=${visit}
      .words=${words}
      .line=${rest.line}
      .shop=${rest.shop}
      .ticket=${this.ticketText}
      @worked=${(event: CustomEvent<Hold>) => this.keeper?.hand(withoutHealth(visit, event.detail, this.flow), false)}
      @hand=${(event: CustomEvent<boolean>) => this.keeper?.hand({ ...visit, printHealth: event.detail }, true)}
      @change=${() => this.begin({ ...context, at: 'review', changing: false })}
      @done=${() => this.wipe()}
      @bench=${() => this.toBench()}
    ></lw-outcome>`;
  }

  private get ticketText(): string {
    const ticket = this.keeper?.ticket;
    return ticket ? `${ticket.word} ${ticket.number}` : '';
  }
}
