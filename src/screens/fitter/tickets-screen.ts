import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Flow } from '../../flow/format.ts';
import type { Tables } from '../../flow/options.ts';
import type { Store } from '../../storage/store.ts';
import { strangeVisits, ticketsOf } from '../../storage/tickets.ts';
import { readCardCode } from '../../visit/card-code.ts';
import { effectiveAnswers } from '../../visit/effective.ts';
import { freshVisit } from '../../visit/fresh-visit.ts';
import type { Hold } from '../../visit/visit.ts';
import type { Words } from '../../words/words.ts';
import type { LineClient } from '../../worker/line-client.ts';
import { LightElement } from '../parts/light-element.ts';
import { type BenchTicket, newTicket, waitedMinutes } from './bench-ticket.ts';
import { isCleared } from './cleared.ts';
import './code-reader.ts';
import { holdOfList } from './hold-text.ts';

/** How often waiting times and the list are looked at again, milliseconds. */
const REFRESH = 15_000;

/** Today's tickets on this device, longest wait first; a card's code; and a blank visit for who will not take the tablet. */
@customElement('lw-tickets')
export class TicketsScreen extends LightElement {
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) store!: Store;
  @property({ attribute: false }) flow!: Flow;
  @property({ attribute: false }) tables!: Tables;
  @property({ attribute: false }) line!: LineClient;
  /** The customers' language, for a visit that nobody has begun. */
  @property() home = '';
  @property() note = '';
  /** A code that came with the address, opened once. */
  @property() code = '';

  @state() private tickets: readonly BenchTicket[] | undefined;
  @state() private holds: ReadonlyMap<string, Hold | 'cleared' | 'mind'> = new Map();
  @state() private strange = 0;
  @state() private finding = '';
  private timer: ReturnType<typeof setInterval> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.refresh();
    this.timer = setInterval(() => void this.refresh(), REFRESH);
    if (this.code) void this.openCode(this.code);
  }

  override disconnectedCallback(): void {
    clearInterval(this.timer);
    super.disconnectedCallback();
  }

  async refresh(): Promise<void> {
    this.tickets = await ticketsOf(this.store);
    this.strange = await strangeVisits(this.store);
    for (const ticket of this.tickets) await this.lookAt(ticket);
  }

  /** How careful to be with a ticket: what travelled, else worked out off this thread. */
  private async lookAt(ticket: BenchTicket): Promise<void> {
    const key = holdKey(ticket);
    if (this.holds.has(key)) return;
    try {
      const { hold: carried, clearance } = ticket.visit;
      const profile = carried && !clearance ? undefined : (await this.line.fit(ticket.visit, 1)).profile;
      const own = profile && (isCleared(profile) ? 'cleared' : holdOfList(profile));
      this.holds = new Map(this.holds).set(key, own ?? carried ?? 'none');
    } catch (reason) {
      console.error(reason);
    }
  }

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`bench.tickets.${key}`, data);
  }

  private open(id: string): void {
    this.dispatchEvent(new CustomEvent('open-ticket', { detail: id }));
  }

  private async openCode(text: string): Promise<void> {
    const { value, findings } = readCardCode(text, this.flow, this.tables);
    if (!value) {
      const [first] = findings;
      this.finding = first ? this.words.say(`finding.${first.code}`, first.data) : '';
      return;
    }
    this.finding = '';
    const code = text.slice(text.lastIndexOf('=') + 1);
    const known = (await ticketsOf(this.store)).find((ticket: BenchTicket) => ticket.bench?.code === code);
    await this.add(() => known ?? newTicket(this.store, value, new Date(), code));
  }

  private async add(make: () => BenchTicket | Promise<BenchTicket>): Promise<void> {
    try {
      this.open((await make()).id);
    } catch (reason) {
      console.error(reason);
      this.finding = this.words.say('bench.note.not-made');
    }
  }

  protected override render() {
    const { tickets } = this;
    return html`<div class="head">
        <h1 id="ask" tabindex="-1">${this.say('title')}</h1>
        ${this.note ? html`<p class="said" role="status">${this.note}</p>` : nothing}
        ${this.store.lasting ? nothing : html`<p class="said">${this.say('not-lasting')}</p>`}
        ${this.strange > 0 ? html`<p class="said">${this.say('strange', { visits: this.strange })}</p>` : nothing}
      </div>
      ${
        tickets === undefined
          ? nothing
          : tickets.length === 0
            ? html`<p class="soft">${this.say('none')}</p>`
            : html`<ul class="tickets">
                ${repeat(
                  tickets,
                  ({ id }) => id,
                  (ticket) => this.row(ticket),
                )}
              </ul>`
      }
      <section class="blank">
        <h2>${this.say('blankTitle')}</h2>
        <p class="soft">${this.say('blankLead')}</p>
        <button
          type="button"
          class="button"
          @click=${() => this.add(() => newTicket(this.store, freshVisit(this.flow, this.home), new Date()))}
        >
          ${this.say('blank')}
        </button>
      </section>
      <lw-code-reader
        .words=${this.words}
        .finding=${this.finding}
        @code=${(event: CustomEvent<string>) => this.openCode(event.detail)}
      ></lw-code-reader>`;
  }

  private row(ticket: BenchTicket) {
    const hold = this.holds.get(holdKey(ticket));
    const activity = effectiveAnswers(ticket.visit, this.flow)['activity'];
    const key = `activity.${String(activity)}`;
    const stops = hold === 'now' || hold === 'today' || hold === 'before-choosing';
    return html`<li>
      <button type="button" class="ticket-row" data-ticket=${ticket.id} ?data-stops=${stops} @click=${() => this.open(ticket.id)}>
        <strong class="name">${ticket.id}</strong>
        <span class="what">${this.words.has(key) ? this.words.say(key) : this.say('no-activity')}</span>
        <span class="hold">${hold === undefined ? '' : this.words.say(hold === 'cleared' ? 'bench.clearance.gently' : `bench.hold.${hold}`)}</span>
        <span class="state soft">${this.since(ticket)}</span>
      </button>
    </li>`;
  }

  private since(ticket: BenchTicket): string {
    if (ticket.state === 'closed') return this.say('closed');
    const minutes = waitedMinutes(ticket, new Date());
    if (minutes === undefined) return this.say('clock');
    const wait = minutes === 0 ? this.say('just-now') : this.say('waiting', { count: minutes });
    return ticket.state === 'open' ? this.say('open', { wait }) : wait;
  }
}

const holdKey = ({ id, revision }: BenchTicket): string => `${id} ${revision}`;
