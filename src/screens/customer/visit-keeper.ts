import type { Flow } from '../../flow/format.ts';
import type { Tables } from '../../flow/options.ts';
import type { InterviewState } from '../../interview/interview-state.ts';
import { restoredInterview, savedInterview } from '../../interview/saved.ts';
import { DraftKeeper } from '../../storage/draft.ts';
import type { Store } from '../../storage/store.ts';
import { nextTicket, putTicket, type Spoken, type Ticket, ticketWord } from '../../storage/tickets.ts';
import type { Visit } from '../../visit/visit.ts';
import { rightToLeft } from '../../words/right-to-left.ts';
import { dayOf } from '../fitter/day.ts';

export type TicketName = Pick<Ticket, 'word' | 'number'>;

/** What was found of a visit broken off: the language it was held in too, unless the draft is from before that was kept. */
interface Left {
  readonly interview?: InterviewState;
  readonly language?: string;
  readonly note?: 'draft-foreign' | 'draft-changed';
}

/**
 * What this tablet keeps of the visit on its screen: the draft while the customer answers, the ticket it stands under,
 * and whether the store refused any of it. It never stops a visit: what cannot be kept is said at the next welcome.
 */
export class VisitKeeper {
  readonly #store: Store;
  readonly #flow: Flow;
  readonly #tables: Tables;
  readonly #language: () => string;
  readonly #fittersLanguage: () => string;
  #draft: DraftKeeper<unknown>;
  #ticket: TicketName | undefined;
  #startedAt = '';
  #refused = false;

  constructor(store: Store, flow: Flow, tables: Tables, language: () => string, fittersLanguage: () => string) {
    this.#store = store;
    this.#flow = flow;
    this.#tables = tables;
    this.#language = language;
    this.#fittersLanguage = fittersLanguage;
    this.#draft = this.#freshDraft();
  }

  get ticket(): TicketName | undefined {
    return this.#ticket;
  }

  /** What every welcome says until the page is loaded anew: that nothing can be kept on this tablet. */
  get standingNote(): '' | 'no-storage' {
    return this.#store.lasting && !this.#refused ? '' : 'no-storage';
  }

  /** An interview of a moment ago, to be offered and never shown: it may be somebody else's. A damaged one is dropped, and said. */
  async left(): Promise<Left> {
    const record = await this.#draft.load().catch(() => undefined);
    if (record === undefined) return {};
    const { interview, ticket, startedAt, language } = Object(record) as Readonly<Record<string, unknown>>;
    const restored = restoredInterview(this.#flow, this.#tables, interview);
    if (!restored.value) {
      await this.#draft.finish().catch(this.#note);
      return { note: 'draft-foreign' };
    }
    if (typeof startedAt !== 'string' || !isToday(startedAt)) {
      await this.#draft.finish().catch(this.#note);
      return {};
    }
    this.#startedAt = startedAt;
    if (isTicketName(ticket)) this.#ticket = ticket;
    else await this.count();
    // A visit broken off at its result goes on from review: nothing was lost, and nothing need be said.
    const changed = restored.findings.some(({ code }) => code !== 'saved-place-moved');
    return {
      interview: restored.value,
      ...(typeof language === 'string' ? { language } : {}),
      ...(changed ? { note: 'draft-changed' } : {}),
    };
  }

  begin(): void {
    this.#draft = this.#freshDraft();
    this.#ticket = undefined;
    this.#startedAt = new Date().toISOString();
  }

  /** Counts the visit that has begun among the day's; resolves once its ticket stands. */
  async count(): Promise<void> {
    const spoken = { fitters: this.#fittersLanguage(), visit: this.#language() };
    this.#ticket = await nextTicket(this.#store, dayOf(new Date(this.#startedAt)), spoken).catch(() =>
      ticketByClock(spoken),
    );
  }

  /**
   * The customer changed the language: a ticket whose word their card has no letters for takes one that it has, under
   * the same number.
   */
  async respeak(): Promise<void> {
    const spoken = { fitters: this.#fittersLanguage(), visit: this.#language() };
    if (this.#ticket === undefined || !rightToLeft(spoken.fitters)) return;
    const { number } = this.#ticket;
    this.#ticket = { number, word: await ticketWord(number, spoken) };
  }

  /** Queues the interview as it stands; returns at once. */
  save(context: InterviewState): void {
    if (context.at === 'welcome') return;
    this.#draft.save({
      interview: savedInterview(this.#flow, context),
      ticket: this.#ticket,
      startedAt: this.#startedAt,
      language: this.#language(),
    });
  }

  /** Puts the finished visit among the day's tickets. */
  async hand(visit: Visit, handed: boolean): Promise<void> {
    if (!this.#ticket) return;
    const { word, number } = this.#ticket;
    const ticket: Ticket = {
      id: `${word} ${number}`,
      word,
      number,
      startedAt: this.#startedAt,
      finishedAt: new Date().toISOString(),
      state: 'waiting',
      handed,
      visit,
      revision: 0,
    };
    await putTicket(this.#store, ticket).catch(this.#note);
  }

  /** Forgets the visit: the draft is flushed, then cleared. */
  async end(): Promise<void> {
    await this.#draft.finish().catch(this.#note);
    this.#draft = this.#freshDraft();
    this.#ticket = undefined;
  }

  readonly #note = (): void => {
    this.#refused = true;
  };

  #freshDraft(): DraftKeeper<unknown> {
    return new DraftKeeper(this.#store, this.#note);
  }
}

/** Where nothing can be counted, the minute of the day tells tickets apart. */
async function ticketByClock(spoken: Spoken): Promise<TicketName> {
  const now = new Date();
  const number = now.getHours() * 60 + now.getMinutes();
  return { word: await ticketWord(number, spoken), number };
}

/** No draft is kept past the day it was begun on, nor one that no longer tells its day. */
const isToday = (moment: string): boolean => new Date(moment).toDateString() === new Date().toDateString();

function isTicketName(record: unknown): record is TicketName {
  const { word, number } = Object(record) as Readonly<Record<string, unknown>>;
  return typeof word === 'string' && Number.isSafeInteger(number);
}
