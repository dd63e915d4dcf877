import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Shop } from '../../card/shop.ts';
import type { Flow } from '../../flow/format.ts';
import type { Tables } from '../../flow/options.ts';
import type { Observation } from '../../observation/observation.ts';
import type { Moved } from '../../shortlist/compare.ts';
import type { Box } from '../../stock/shoe.ts';
import type { BoxMark } from '../../stock/today.ts';
import { markBox, marksOn } from '../../storage/shop-marks.ts';
import type { Store } from '../../storage/store.ts';
import { changeTicket } from '../../storage/tickets.ts';
import type { TryOn } from '../../visit/visit.ts';
import type { Words } from '../../words/words.ts';
import type { BenchLine } from '../../worker/bench-line.ts';
import type { LineClient } from '../../worker/line-client.ts';
import { LightElement } from '../parts/light-element.ts';
import './answers-panel.ts';
import { pairsOn } from './bench-pairs.ts';
import { type BenchTicket, type Change, type Content, NO_NOTES, writeChange } from './bench-ticket.ts';
import { isStop } from './cautions-panel.ts';
import { dayOf, momentOf } from './day.ts';
import './decide-panel.ts';
import './line-up-panel.ts';
import { movedBetween, movedText } from './moved-text.ts';
import './need-list.ts';
import type { MarkWish } from './pull-list-panel.ts';
import type { Shortcut } from './shortcuts.ts';
import { addTally } from './tally.ts';

export const VIEWS = ['profile', 'measure', 'line-up', 'feet', 'decide'] as const;
export type View = (typeof VIEWS)[number];

/** Parts that are loaded with their view; a build without them leaves the view out. */
const MEASURE = import.meta.glob('./measure/measure.ts');
const TRY_ON = import.meta.glob('./try-on/try-on.ts');
const LOADERS: Readonly<Partial<Record<View, (() => Promise<unknown>) | undefined>>> = {
  measure: MEASURE['./measure/measure.ts'],
  feet: TRY_ON['./try-on/try-on.ts'],
};
const shownViews = VIEWS.filter((view) => (view !== 'measure' && view !== 'feet') || LOADERS[view] !== undefined);

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

  @state() private ticket: BenchTicket | undefined;
  @state() private work: BenchLine | undefined;
  @state() private moved: readonly Moved[] = [];
  @state() private view: View = 'profile';
  @state() private noteCode = '';
  @state() private waiting: Change | undefined;
  @state() private undone: readonly Content[] = [];
  @state() private marks: readonly BoxMark[] = [];
  @state() private changedSince: readonly string[] = [];
  private turn = 0;
  private writing: Promise<void> = Promise.resolve();

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('active') && this.active) void this.open();
  }

  /** Looks again at each coming back: another tab may have changed the ticket, another customer the stock. */
  private async open(): Promise<void> {
    await this.writing;
    const kept = await this.store.get<BenchTicket>('visits', this.ticketId);
    if (!kept) {
      this.noteCode = 'gone';
      return;
    }
    if (this.ticket && kept.revision !== this.ticket.revision) this.undone = [];
    this.ticket = kept;
    this.marks = await marksOn(this.store, dayOf(new Date())).catch(() => []);
    await this.run();
    const shown = this.ticket.bench?.shown ?? [];
    const names = this.work ? pairsOn(this.work).map(({ entry }) => entry.shoe.name) : [];
    this.changedSince = shown.filter((name) => !names.includes(name));
    await this.updateComplete;
    this.querySelector<HTMLElement>('#ask')?.focus({ preventScroll: true });
  }

  /** Works the line out anew, off this thread. Of answers that overtake each other only the newest counts. */
  private async run(): Promise<void> {
    const { ticket } = this;
    if (!ticket) return;
    this.turn += 1;
    const mine = this.turn;
    const notes = ticket.bench ?? NO_NOTES;
    const before = this.work;
    try {
      await this.line.useMarks(this.marks, dayOf(new Date()));
      const work = await this.line.bench({
        visit: ticket.visit,
        aside: notes.aside.map(({ shoe }) => shoe),
        pulledIn: notes.pulledIn,
      });
      if (mine !== this.turn) return;
      this.work = work;
      if (before) this.moved = movedBetween(before, work);
    } catch (reason) {
      console.error(reason);
      this.noteCode = 'no-line';
    }
  }

  /** Changes are written one after the other, so that each builds on the one before. */
  private apply(change: Change, undoable = true): void {
    this.writing = this.writing.then(() => this.write(change, undoable));
  }

  private async write(change: Change, undoable: boolean): Promise<void> {
    const seen = this.ticket;
    if (!seen) return;
    const content: Content = { visit: seen.visit, ...(seen.bench && { bench: seen.bench }) };
    const names = this.work ? pairsOn(this.work).map(({ entry }) => entry.shoe.name) : [];
    const stamped: Change = (old) => {
      const next = change(old);
      return { ...next, bench: { ...(next.bench ?? NO_NOTES), shown: names } };
    };
    const written = await writeChange(this.store, seen, stamped);
    this.noteCode = NOTES[written.is];
    if (written.is === 'gone') return;
    this.ticket = written.ticket;
    this.waiting = written.is === 'newer' ? change : undefined;
    if (written.is === 'newer') this.undone = [];
    else if (undoable) this.undone = [...this.undone, content];
    this.changedSince = [];
    await this.run();
  }

  private undo(): void {
    const last = this.undone.at(-1);
    if (!last) return;
    this.undone = this.undone.slice(0, -1);
    this.apply(() => last, false);
  }

  private async mark({ box, what }: MarkWish): Promise<void> {
    try {
      this.marks = await markBox(this.store, { box, what, at: momentOf(new Date()) });
    } catch (reason) {
      console.error(reason);
      this.noteCode = 'unsaved';
      return;
    }
    await this.run();
  }

  private async close(): Promise<void> {
    await this.writing;
    const { ticket, work } = this;
    if (!ticket || !work) return;
    const minutes = (Date.now() - new Date(ticket.startedAt).getTime()) / 60_000;
    try {
      const { refused } = await changeTicket(this.store, ticket, { state: 'closed' });
      if (refused) {
        this.noteCode = 'newer';
        this.ticket = (await this.store.get<BenchTicket>('visits', ticket.id)) ?? ticket;
        await this.run();
        return;
      }
      await addTally(this.store, work.line, this.flow, minutes >= 0 && minutes < A_DAY ? minutes : undefined);
    } catch (reason) {
      console.error(reason);
      this.noteCode = 'unsaved';
      return;
    }
    this.dispatchEvent(new CustomEvent('ticket-closed', { detail: ticket.id }));
  }

  /** A key of the bench that is about this ticket. */
  act(shortcut: Shortcut): void {
    if (shortcut === 'undo') this.undo();
    else if (shortcut !== 'tickets' && shownViews.includes(shortcut)) this.show(shortcut);
  }

  private show(view: View): void {
    this.view = view;
    void LOADERS[view]?.();
    void this.updateComplete.then(() =>
      this.querySelector<HTMLElement>('.views [aria-current]')?.scrollIntoView({ block: 'nearest' }),
    );
  }

  protected override render() {
    if (!this.active) return nothing;
    const { ticket, work, words } = this;
    const say = (key: string, data?: Readonly<Record<string, string | number>>) => words.say(`bench.${key}`, data);
    return html`<div class="ticket-head">
        <h1 id="ask" tabindex="-1">${this.ticketId}</h1>
        ${ticket && !ticket.handed ? html`<p class="soft">${say('ticket.notHanded')}</p>` : nothing}
        <button type="button" class="button undo" ?disabled=${this.undone.length === 0} @click=${this.undo}>${say('undo')}</button>
      </div>
      ${this.note()}
      ${
        work && ticket
          ? html`<lw-bench-cautions
                .profile=${work.line.profile}
                .clearance=${ticket.visit.clearance}
                .words=${words}
                .emergencyNumber=${this.shop.emergencyNumber}
                .initials=${this.initials}
                .brief=${this.view !== 'profile' && this.view !== 'feet'}
                @change-ticket=${this.changed}
              ></lw-bench-cautions>
              ${this.glance(work)}
              <nav class="views" aria-label=${say('views')}>
                ${shownViews.map(
                  (view) => html`<button
                    type="button"
                    data-view=${view}
                    aria-current=${this.view === view ? 'page' : nothing}
                    @click=${() => this.show(view)}
                  >
                    ${say(`view.${view}`)}
                  </button>`,
                )}
              </nav>
              <div class="view" data-view=${this.view} @change-ticket=${this.changed} @mark=${(event: CustomEvent<MarkWish>) => this.mark(event.detail)}>
                ${this.shown(ticket, work)}
              </div>`
          : this.noteCode
            ? nothing
            : html`<p role="status">${words.say('screen.working')}</p>`
      }`;
  }

  private readonly changed = (event: Event): void => {
    event.stopPropagation();
    this.apply((event as CustomEvent<Change>).detail);
  };

  private note() {
    const { words, waiting } = this;
    if (this.changedSince.length > 0) {
      return html`<p class="said" role="status">${words.say('bench.note.stock-changed', { shoes: this.changedSince.join(', ') })}</p>`;
    }
    if (!this.noteCode) return nothing;
    return html`<div class="said" role="alert">
      <div>
        <p>${words.say(`bench.note.${this.noteCode}`)}</p>
        ${
          waiting
            ? html`<div class="line">
                <button type="button" class="button main" data-act="redo" @click=${() => this.apply(waiting)}>${words.say('bench.note.redo')}</button>
                <button type="button" class="button" @click=${() => this.letGo()}>${words.say('bench.note.letGo')}</button>
              </div>`
            : nothing
        }
      </div>
    </div>`;
  }

  private letGo(): void {
    this.waiting = undefined;
    this.noteCode = '';
  }

  /** The pairs at a glance on every view, and what the last change moved. */
  private glance(work: BenchLine) {
    const pairs = pairsOn(work);
    return html`<section class="glance" aria-label=${this.words.say('bench.lines.title')}>
      <ol>
        ${pairs.map(({ letter, entry }) => html`<li><span class="letter">${letter}</span> ${entry.shoe.name}</li>`)}
      </ol>
      <div role="status" class="moved">
        ${
          this.moved.length > 0
            ? html`<ul>
                ${this.moved.map((each) => html`<li>${movedText(each, this.ticket?.bench ?? NO_NOTES, this.words)}</li>`)}
              </ul>`
            : nothing
        }
      </div>
    </section>`;
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
            .flow=${this.flow}
            .tables=${this.tables}
            .words=${words}
            .initials=${this.initials}
          ></lw-answers>
          <lw-needs .why=${work.why} .words=${words} .currency=${this.shop.currency}></lw-needs>
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
          .marks=${this.marks}
          .words=${words}
          .line=${this.line}
          .stopped=${stopped}
        ></lw-line-ups>`;
      case 'feet':
        return html`<lw-try-on
          .visit=${ticket.visit}
          .line=${work.line}
          .entries=${work.pulledIn.map(({ entry }) => entry)}
          .words=${words}
          .shop=${this.shop}
          .boxesOf=${this.boxesOf}
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
          @close-ticket=${() => this.close()}
        ></lw-decide>`;
    }
  }

  private readonly boxesOf = (shoe: string): Promise<readonly Box[]> => this.line.boxesOf(shoe);

  private observed(observation: Observation): void {
    this.apply(({ visit, ...rest }) => ({ ...rest, visit: { ...visit, observation } }));
  }

  private tried(tryOns: readonly TryOn[]): void {
    this.apply(({ visit, ...rest }) => ({ ...rest, visit: { ...visit, tryOns } }));
  }
}

const NOTES = { written: '', newer: 'newer', gone: 'gone', unsaved: 'unsaved' } as const;
/** Minutes. A visit that lasted longer was not timed. */
const A_DAY = 24 * 60;
