import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Flow } from '../../flow/format.ts';
import type { BoxMark } from '../../stock/today.ts';
import { markBox, marksOn } from '../../storage/shop-marks.ts';
import type { Store } from '../../storage/store.ts';
import { closeTicket, isTicket } from '../../storage/tickets.ts';
import { effectiveAnswers } from '../../visit/effective.ts';
import type { BenchLine } from '../../worker/bench-line.ts';
import type { LineClient } from '../../worker/line-client.ts';
import { pairsOn } from './bench-pairs.ts';
import { type BenchTicket, type Change, type Content, NO_NOTES, rememberShown, writeChange } from './bench-ticket.ts';
import { dayOf, momentOf } from './day.ts';
import { type MovedAtBench, movedBetween } from './moved-text.ts';
import type { MarkWish } from './pull-list-panel.ts';
import { addTally } from './tally.ts';
import type { Closed } from './ticket-work.ts';
import { changedPart } from './undone-where.ts';
import type { View } from './views.ts';

/** Where a ticket is kept and its line worked out; the screen that shows it. */
export interface KeeperHost extends ReactiveControllerHost {
  readonly ticketId: string;
  readonly store: Store;
  readonly flow: Flow;
  readonly line: LineClient;
}

const NOTES = { written: '', newer: 'newer', gone: 'gone', unsaved: 'unsaved' } as const;
/** Minutes. A visit that lasted longer was not timed. */
const A_DAY = 24 * 60;

/**
 * One open ticket behind its screen: what is kept, what it comes to, and what can be undone. Changes are written one
 * after the other and the line is worked out anew after each, off the screens' thread.
 */
export class TicketKeeper implements ReactiveController {
  readonly #host: KeeperHost;
  ticket: BenchTicket | undefined;
  work: BenchLine | undefined;
  marks: readonly BoxMark[] = [];
  /** What the last change moved. */
  moved: readonly MovedAtBench[] = [];
  /** Names of pairs that were shown when the ticket was last open, and are no more. */
  lost: readonly string[] = [];
  /** Words: `bench.note.<code>`. */
  noteCode = '';
  /** A change that somebody else's stands in the way of. */
  waiting: Change | undefined;
  #undone: readonly Content[] = [];
  #turn = 0;
  #writing: Promise<void> = Promise.resolve();

  constructor(host: KeeperHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {}

  /** Nobody has said yet what the shoes are for: no pair is named before that. */
  get asksFirst(): boolean {
    const { ticket } = this;
    return ticket !== undefined && effectiveAnswers(ticket.visit, this.#host.flow)['activity'] === undefined;
  }

  get canUndo(): boolean {
    return this.#undone.length > 0;
  }

  /** The part of the ticket in which Undo would take something back. */
  get undoesIn(): View | undefined {
    const before = this.#undone.at(-1);
    return before && this.ticket && changedPart(before, this.ticket);
  }

  /** Looks again at each coming back: another tab may have changed the ticket, another customer the stock. */
  async open(): Promise<void> {
    await this.#writing;
    const { store, ticketId } = this.#host;
    const kept = await store.get<BenchTicket>('visits', ticketId);
    if (!isTicket(kept)) {
      this.#tell('gone');
      return;
    }
    if (this.ticket && kept.revision !== this.ticket.revision) this.#undone = [];
    this.ticket = kept;
    this.marks = await marksOn(store, dayOf(new Date())).catch(() => []);
    const shown = kept.bench?.shown ?? [];
    await this.#run();
    const names = this.#names;
    this.lost = shown.filter((name) => !names.includes(name));
    this.#host.requestUpdate();
  }

  get #names(): readonly string[] {
    return this.work ? pairsOn(this.work).map(({ entry }) => entry.shoe.name) : [];
  }

  #tell(noteCode: string): void {
    this.noteCode = noteCode;
    this.#host.requestUpdate();
  }

  /** Of answers that overtake each other only the newest counts. */
  async #run(): Promise<void> {
    const { ticket } = this;
    if (!ticket) return;
    const { line, store } = this.#host;
    this.#turn += 1;
    const mine = this.#turn;
    const { aside, pulledIn, letters = [] } = ticket.bench ?? NO_NOTES;
    const before = this.work;
    try {
      await line.useMarks(this.marks, dayOf(new Date()));
      const whole = await line.bench({ visit: ticket.visit, aside: aside.map(({ shoe }) => shoe), pulledIn, letters });
      const work = this.asksFirst ? { ...withoutLineUps(whole), letters } : whole;
      if (mine !== this.#turn) return;
      this.work = work;
      if (before) this.moved = movedBetween(before, work, this.marks);
      this.ticket = await rememberShown(store, ticket, { shown: this.#names, letters: work.letters });
    } catch (reason) {
      console.error(reason);
      this.noteCode = 'no-line';
    }
    this.#host.requestUpdate();
  }

  apply(change: Change, undoable = true): void {
    this.#writing = this.#writing.then(() => this.#write(change, undoable));
  }

  async #write(change: Change, undoable: boolean): Promise<void> {
    const seen = this.ticket;
    if (!seen) return;
    const written = await writeChange(this.#host.store, seen, change);
    this.#tell(NOTES[written.is]);
    if (written.is === 'gone') return;
    this.ticket = written.ticket;
    this.waiting = written.is === 'newer' ? change : undefined;
    if (written.is === 'newer') this.#undone = [];
    else if (undoable)
      this.#undone = [...this.#undone, { visit: seen.visit, ...(seen.bench && { bench: seen.bench }) }];
    this.lost = [];
    await this.#run();
  }

  undo(): void {
    const last = this.#undone.at(-1);
    if (!last) return;
    this.#undone = this.#undone.slice(0, -1);
    this.apply(() => last, false);
  }

  /** Leaves out the change that came second. */
  letGo(): void {
    this.waiting = undefined;
    this.#tell('');
  }

  async mark({ box, what }: MarkWish): Promise<void> {
    try {
      this.marks = await markBox(this.#host.store, { box, what, at: momentOf(new Date()) });
    } catch (reason) {
      console.error(reason);
      this.#tell('unsaved');
      return;
    }
    await this.#run();
  }

  /**
   * Wipes the ticket, takes a sold pair off its box and adds the visit to the sums; what to say then. Nothing: it could
   * not be, and the note says why.
   */
  async close(sold?: string): Promise<Closed['noteCode'] | undefined> {
    await this.#writing;
    const { ticket, work } = this;
    if (!ticket || !work) return undefined;
    const { store, flow } = this.#host;
    const minutes = (Date.now() - new Date(ticket.startedAt).getTime()) / 60_000;
    try {
      const { ticket: standing, refused } = await closeTicket(store, ticket);
      if (refused) {
        this.ticket = standing;
        this.noteCode = 'newer';
        await this.#run();
        return undefined;
      }
    } catch (reason) {
      console.error(reason);
      this.#tell('unsaved');
      return undefined;
    }
    try {
      await addTally(store, work.line, flow, minutes >= 0 && minutes < A_DAY ? minutes : undefined);
    } catch (reason) {
      console.error(reason);
      return 'closed-uncounted';
    }
    if (sold === undefined) return 'closed';
    try {
      const now = new Date();
      this.marks = await markBox(store, { box: sold, what: 'sold', at: momentOf(now) });
      await this.#host.line.useMarks(this.marks, dayOf(now));
      return 'closed-sold';
    } catch (reason) {
      console.error(reason);
      return 'closed-unsold';
    }
  }
}

function withoutLineUps(work: BenchLine): BenchLine {
  const { line } = work;
  return { ...work, line: { ...line, shortlist: { ...line.shortlist, lineUps: [] } } };
}
