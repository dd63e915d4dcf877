import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { labelSystem } from '../../card/label-system.ts';
import type { Shop } from '../../card/shop.ts';
import type { Flow } from '../../flow/format.ts';
import type { Tables } from '../../flow/options.ts';
import type { Observation } from '../../observation/observation.ts';
import type { Box } from '../../stock/shoe.ts';
import type { Store } from '../../storage/store.ts';
import { listText } from '../../units/list-text.ts';
import { effectiveAnswers } from '../../visit/effective.ts';
import type { TryOn } from '../../visit/visit.ts';
import type { Words } from '../../words/words.ts';
import type { BenchLine } from '../../worker/bench-line.ts';
import type { LineClient } from '../../worker/line-client.ts';
import { LightElement } from '../parts/light-element.ts';
import './answers-panel.ts';
import { pairsOn } from './bench-pairs.ts';
import { type BenchTicket, type Change, NO_NOTES } from './bench-ticket.ts';
import { isStop } from './cautions-panel.ts';
import type { CloseWish } from './decide-panel.ts';
import './decide-panel.ts';
import { glance } from './glance.ts';
import { headSaid } from './head-said.ts';
import './line-up-panel.ts';
import { movedTexts } from './moved-text.ts';
import './need-list.ts';
import type { MarkWish } from './pull-list-panel.ts';
import type { Shortcut } from './shortcuts.ts';
import { TicketKeeper } from './ticket-keeper.ts';
import { type OwnSteps, undoButton } from './undo-button.ts';
import { LOADERS, shownViews, type View, viewsNav } from './views.ts';

/** A ticket that is gone, and what to say of it. Words: `bench.note.<code>`. */
export interface Closed {
  readonly id: string;
  readonly noteCode: 'closed' | 'closed-sold' | 'closed-uncounted' | 'closed-unsold';
}

/** One ticket's workspace: what it comes to on top, and below it the profile, measuring, line-up, try-on or decision. */
@customElement('lw-ticket')
export class TicketWork extends LightElement {
  @property() ticketId = '';
  @property({ attribute: false }) store!: Store;
  @property({ attribute: false }) flow!: Flow;
  @property({ attribute: false }) tables!: Tables;
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) line!: LineClient;
  @property({ attribute: false }) shop!: Shop;
  @property() initials = '';
  /** The tab in front. The others keep their place and their undo, and show nothing. */
  @property({ type: Boolean }) active = false;

  @state() private view: View = 'profile';
  /** What the part in front would take back of its own steps; empty where there is nothing. */
  @state() private lastStep = '';
  /** What Undo took back last, while nothing else was done. */
  @state() private takenBack = '';
  private readonly kept = new TicketKeeper(this);
  private bar: Element | null = null;
  private readonly barWatch = new ResizeObserver(() =>
    this.style.setProperty('--bar', `${this.bar?.clientHeight ?? 0}px`),
  );

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('active') || !this.active) return;
    // Its parts begin anew with the tab, and so do their steps.
    this.lastStep = '';
    void this.open();
  }

  private async open(): Promise<void> {
    await this.kept.open();
    await this.updateComplete;
    this.querySelector<HTMLElement>('#ask')?.focus({ preventScroll: true });
  }

  private async close({ sold }: CloseWish): Promise<void> {
    const noteCode = await this.kept.close(sold);
    if (noteCode === undefined) return;
    const detail: Closed = { id: this.ticketId, noteCode };
    this.dispatchEvent(new CustomEvent('ticket-closed', { detail }));
  }

  /** A key of the bench that is about this ticket. */
  act(shortcut: Shortcut): void {
    if (shortcut === 'undo') this.undo();
    else if (shortcut !== 'tickets' && shownViews.includes(shortcut)) this.show(shortcut);
  }

  /** Measuring and trying on have steps of their own to take back. */
  private get ownSteps(): boolean {
    return this.view === 'measure' || this.view === 'feet';
  }

  /** What Undo would take back, by name: a step of the part in front, else the part of the ticket it was made in. */
  private get undoes(): string {
    if (this.ownSteps) return this.lastStep;
    const part = this.kept.undoesIn;
    return part === undefined ? '' : this.words.say(`bench.view.${part}`);
  }

  private undo(): void {
    if (this.ownSteps) {
      if (this.lastStep !== '') this.querySelector<OwnSteps>('lw-measure, lw-try-on')?.undo();
      return;
    }
    // A step of another part is out of sight: that it is gone has to be said.
    this.takenBack = this.undoes;
    this.kept.undo();
  }

  private show(view: View): void {
    this.view = view;
    this.lastStep = '';
    this.takenBack = '';
    void LOADERS[view]?.();
    // Each view begins at its top, with its notes folded: what is to be filled in is in sight.
    for (const notes of this.querySelectorAll<HTMLDetailsElement>('lw-bench-cautions details')) notes.open = false;
    window.scrollTo(0, 0);
  }

  /** What sticks below the bar has to know how high the bar is. */
  protected override updated(): void {
    const bar = this.querySelector('.ticket-bar');
    if (bar === this.bar) return;
    this.bar = bar;
    this.barWatch.disconnect();
    if (bar) this.barWatch.observe(bar);
  }

  override disconnectedCallback(): void {
    this.barWatch.disconnect();
    this.bar = null;
    super.disconnectedCallback();
  }

  protected override render() {
    if (!this.active) return nothing;
    const { words, kept } = this;
    const { ticket, work } = kept;
    const say = (key: string, data?: Readonly<Record<string, string | number>>) => words.say(`bench.${key}`, data);
    return html`<div class="ticket-bar">
        <div class="ticket-head">
          <h1 id="ask" tabindex="-1">${this.ticketId}</h1>
          ${work ? headSaid(work.line.profile, kept.asksFirst, words) : nothing}
          <div class="ticket-acts">
            ${work ? viewsNav(this.view, (view) => this.show(view), words) : nothing}
            <span role="status" class="soft taken-back">${this.takenBack ? words.say('measure.undone', { what: this.takenBack }) : nothing}</span>
            ${undoButton(this.ownSteps ? this.lastStep !== '' : kept.canUndo, this.undoes, () => this.undo(), words)}
          </div>
        </div>
        ${work && ticket ? this.glance(ticket, work) : nothing}
      </div>
      ${ticket && !ticket.handed ? html`<p class="soft not-handed">${say('ticket.notHanded', { hold: say(`hold.${ticket.visit.hold ?? 'skipped'}`) })}</p>` : nothing}
      ${ticket?.bench?.code && !ticket.visit.observation.feet ? html`<p class="soft from-card">${say('ticket.fromCard')}</p>` : nothing}
      ${this.note()}
      ${
        work && ticket
          ? html`<lw-bench-cautions
                .profile=${work.line.profile}
                .clearance=${ticket.visit.clearance}
                .words=${words}
                .emergencyNumber=${this.shop.emergencyNumber}
                .initials=${this.initials}
                .brief=${this.view !== 'profile'}
                @change-ticket=${this.changed}
              ></lw-bench-cautions>
              <div class="view" data-view=${this.view} @change-ticket=${this.changed} @mark=${(event: CustomEvent<MarkWish>) => kept.mark(event.detail)} @last-step=${this.stepped}>
                ${this.shown(ticket, work)}
              </div>`
          : kept.noteCode
            ? nothing
            : html`<p role="status">${words.say('screen.working')}</p>`
      }`;
  }

  private readonly changed = (event: Event): void => {
    event.stopPropagation();
    this.takenBack = '';
    this.kept.apply((event as CustomEvent<Change>).detail);
  };

  private note() {
    const { words, kept } = this;
    const { waiting } = kept;
    if (kept.lost.length > 0) {
      return html`<p class="said" role="status">${words.say('bench.note.stock-changed', { shoes: listText(kept.lost, words.language, 'and') })}</p>`;
    }
    if (!kept.noteCode) return nothing;
    return html`<div class="said" role="alert">
      <div>
        <p>${words.say(`bench.note.${kept.noteCode}`)}</p>
        ${
          waiting
            ? html`<div class="line">
                <button type="button" class="button main" data-act="redo" @click=${() => kept.apply(waiting)}>${words.say('bench.note.redo')}</button>
                <button type="button" class="button" @click=${() => kept.letGo()}>${words.say('bench.note.letGo')}</button>
              </div>`
            : nothing
        }
      </div>
    </div>`;
  }

  /** The line-up and the try-on name their pairs themselves. */
  private glance(ticket: BenchTicket, work: BenchLine) {
    const pairs = this.view === 'line-up' || this.view === 'feet' ? [] : pairsOn(work);
    const moved = movedTexts(this.kept.moved, ticket.bench ?? NO_NOTES, this.words);
    return glance(pairs, labelSystem(ticket.visit), moved, this.words);
  }

  private shown(ticket: BenchTicket, work: BenchLine) {
    const { words } = this;
    const stopped = isStop(work.line.profile.hold);
    switch (this.view) {
      case 'profile':
        return html`<div class="two">
          <lw-answers
            .visit=${ticket.visit}
            .unknown=${work.line.profile.unknown}
            .why=${work.why}
            .toeRoom=${work.line.profile.size.toeRoom}
            .flow=${this.flow}
            .tables=${this.tables}
            .words=${words}
            .currency=${this.shop.currency}
            .initials=${this.initials}
          ></lw-answers>
          <lw-needs
            .why=${work.why}
            .answers=${effectiveAnswers(ticket.visit, this.flow)}
            .flow=${this.flow}
            .words=${words}
            .currency=${this.shop.currency}
          ></lw-needs>
        </div>`;
      case 'measure':
        return html`<lw-measure
          .visit=${ticket.visit}
          .words=${words}
          .facts=${work.line.profile.facts}
          .advice=${work.line.profile.size}
          .fitter=${this.initials}
          @observation=${(event: CustomEvent<Observation>) => this.observed(event.detail)}
        ></lw-measure>`;
      case 'line-up':
        return html`<lw-line-ups
          .work=${work}
          .notes=${ticket.bench ?? NO_NOTES}
          .marks=${this.kept.marks}
          .words=${words}
          .currency=${this.shop.currency}
          .first=${labelSystem(ticket.visit)}
          .line=${this.line}
          .stopped=${stopped}
          .asksFirst=${this.kept.asksFirst && !stopped}
          @measure=${() => this.show('measure')}
        ></lw-line-ups>`;
      case 'feet':
        return html`<lw-try-on
          .visit=${ticket.visit}
          .line=${work.line}
          .entries=${work.pulledIn.map(({ entry }) => entry)}
          .letters=${work.letters}
          .words=${words}
          .shop=${this.shop}
          .boxesOf=${this.boxesOf}
          @measure=${() => this.show('measure')}
          @try-ons=${(event: CustomEvent<readonly TryOn[]>) => this.tried(event.detail)}
        ></lw-try-on>`;
      case 'decide':
        return html`<lw-decide
          .ticket=${ticket}
          .work=${work}
          .words=${words}
          .line=${this.line}
          .shop=${this.shop}
          .stopped=${stopped}
          @close-ticket=${(event: CustomEvent<CloseWish>) => this.close(event.detail)}
        ></lw-decide>`;
    }
  }

  private readonly stepped = (event: CustomEvent<string>): void => {
    this.lastStep = event.detail;
  };

  private readonly boxesOf = (shoe: string): Promise<readonly Box[]> => this.line.boxesOf(shoe);

  private observed(observation: Observation): void {
    this.kept.apply(({ visit, ...rest }) => ({ ...rest, visit: { ...visit, observation } }));
  }

  private tried(tryOns: readonly TryOn[]): void {
    this.kept.apply(({ visit, ...rest }) => ({ ...rest, visit: { ...visit, tryOns } }));
  }
}
