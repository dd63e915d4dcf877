import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { LineUp } from '../../shortlist/shortlist.ts';
import type { LabelSystem } from '../../stock/shoe.ts';
import type { BoxMark } from '../../stock/today.ts';
import type { Words } from '../../words/words.ts';
import type { BenchLine, FoundShoe } from '../../worker/bench-line.ts';
import type { LineClient } from '../../worker/line-client.ts';
import { apart } from '../parts/apart.ts';
import { LightElement } from '../parts/light-element.ts';
import { ChangeEvent } from './bench-event.ts';
import { type BenchPair, pairsOn } from './bench-pairs.ts';
import { type BenchNotes, NO_NOTES } from './bench-ticket.ts';
import './compare-panel.ts';
import { boxSaid } from './box-said.ts';
import { measureFirst } from './measure-first.ts';
import './reason-form.ts';
import { keptReason } from '../../card/text/kept-reason.ts';
import { forText } from '../../card/text/pairs-text.ts';
import { pairSaid } from './pair-said.ts';
import './pull-list-panel.ts';
import { fromText, mustText, optionText } from './why-text.ts';

/** Why a pair is set aside, in one tap. Words: `bench.reason.<id>`. */
const ASIDE_REASONS = ['not-liked', 'does-not-fit', 'had-it-before', 'too-dear', 'fitter-doubts'] as const;
/** More than four on one tape cannot be told apart. Our choice. */
const MOST_COMPARED = 4;

/** The line-up as it stands: set aside, pull in, compare, and the boxes for the stockroom. */
@customElement('lw-line-ups')
export class LineUpPanel extends LightElement {
  @property({ attribute: false }) work!: BenchLine;
  @property({ attribute: false }) notes: BenchNotes = NO_NOTES;
  @property({ attribute: false }) marks: readonly BoxMark[] = [];
  @property({ attribute: false }) words!: Words;
  @property() currency = '';
  /** The size system that labels begin with. */
  @property() first: LabelSystem = 'eu';
  @property({ attribute: false }) line!: LineClient;
  /** The hold stops the line: nothing is pulled in either. */
  @property({ type: Boolean }) stopped = false;

  /** Nobody has said yet what the shoes are for. */
  @property({ type: Boolean }) asksFirst = false;

  @state() private asking = '';
  @state() private compared: readonly string[] = [];
  @state() private found: readonly FoundShoe[] | undefined;

  private pulledNow = '';

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`bench.lines.${key}`, data);
  }

  private changeNotes(change: (notes: BenchNotes) => BenchNotes): void {
    this.dispatchEvent(new ChangeEvent(({ visit, bench }) => ({ visit, bench: change(bench ?? NO_NOTES) })));
  }

  private setAside(shoe: string, reason: string): void {
    this.asking = '';
    this.changeNotes((notes) => ({
      ...notes,
      aside: [...notes.aside.filter((each) => each.shoe !== shoe), { shoe, reason }],
      pulledIn: notes.pulledIn.filter((id) => id !== shoe),
    }));
  }

  private bringBack(shoe: string): void {
    this.changeNotes((notes) => ({ ...notes, aside: notes.aside.filter((each) => each.shoe !== shoe) }));
  }

  /** A pair just pulled in is brought into view as soon as it stands there. */
  protected override updated(): void {
    const pair = this.pulledNow && this.querySelector(`.pair[data-shoe="${CSS.escape(this.pulledNow)}"]`);
    if (!pair) return;
    this.pulledNow = '';
    pair.scrollIntoView({ block: 'center' });
  }

  private pullIn(shoe: string): void {
    this.found = undefined;
    this.pulledNow = shoe;
    this.changeNotes((notes) => ({
      ...notes,
      aside: notes.aside.filter((each) => each.shoe !== shoe),
      pulledIn: [...new Set([...notes.pulledIn, shoe])],
    }));
  }

  private async search(typed: string): Promise<void> {
    this.found = typed.trim() === '' ? undefined : await this.line.findShoes(typed, this.work.line.profile.size);
  }

  private compare(shoe: string, on: boolean): void {
    this.compared = on ? [...this.compared, shoe].slice(-MOST_COMPARED) : this.compared.filter((id) => id !== shoe);
  }

  protected override render() {
    const pairs = pairsOn(this.work);
    const { lineUps } = this.work.line.shortlist;
    const pulled = pairs.filter(({ fails }) => fails !== undefined);
    const chosen = pairs.filter(({ entry }) => this.compared.includes(entry.shoe.id));
    return html`${lineUps.length === 0 ? html`<p class="said">${this.say(this.asksFirst ? 'askFirst' : 'none')}</p>` : nothing}
      ${pairs.length > 0 ? measureFirst(this.work.line.profile, this.words, () => this.dispatchEvent(new CustomEvent('measure'))) : nothing}
      ${lineUps.map((lineUp) => this.lineUp(lineUp, pairs))}
      ${
        pulled.length > 0
          ? html`<section>
              <h2>${this.say('pulledIn')}</h2>
              <ul class="pairs">
                ${pulled.map((pair) => this.pair(pair))}
              </ul>
            </section>`
          : nothing
      }
      ${this.aside()}
      ${
        chosen.length > 1
          ? html`<lw-compare .pairs=${chosen} .profile=${this.work.line.profile} .visit=${this.work.line.visit} .words=${this.words}></lw-compare>`
          : pairs.length > 1
            ? html`<p class="soft">${this.say('compareHow')}</p>`
            : nothing
      }
      ${this.stopped ? nothing : this.pullInForm()}
      <lw-pull-list .work=${this.work} .pairs=${pairs} .first=${this.first} .marks=${this.marks} .words=${this.words}></lw-pull-list>`;
  }

  private lineUp(lineUp: LineUp, pairs: readonly BenchPair[]) {
    const { words } = this;
    const own = pairs.filter(({ entry }) => lineUp.entries.some(({ shoe }) => shoe.id === entry.shoe.id));
    const must = (attribute: string, value: string | number | boolean) =>
      mustText({ attribute, value }, this.currency, words);
    const more = lineUp.more.filter(({ shoe }) => !this.notes.pulledIn.includes(shoe.id));
    return html`<section class="line-up">
      <h2>${lineUp.for === 'all' ? this.say('title') : words.say('card.for', { for: forText(lineUp.for, words) })}</h2>
      <ol class="pairs">
        ${own.map((pair) => this.pair(pair))}
      </ol>
      <p class="soft">${words.say(`sureness.${lineUp.sureness}`)}</p>
      ${this.whatIf(lineUp)}
      ${
        lineUp.moreWithout
          ? html`<p class="soft">${words.say(lineUp.moreWithout.madeFor ? 'card.pair.made-for' : 'card.pair.dropped', { must: must(lineUp.moreWithout.must, lineUp.moreWithout.value), count: lineUp.moreWithout.pairs })}</p>`
          : nothing
      }
      ${lineUp.ifDropped.map(
        (each) =>
          html`<p>${words.say('card.pair.dropped', { must: must(each.must, each.value), count: each.pairs })}</p>`,
      )}
      ${
        lineUp.removed.length > 0
          ? html`<details>
              <summary>${this.say('removed')}</summary>
              <ul>
                ${lineUp.removed.map(
                  (each) => html`<li>
                    ${this.say('removedBy', { must: must(each.must, each.value), count: each.count })}
                    ${each.unrecorded > 0 ? words.say('lacks.unrecorded', { count: each.unrecorded }) : nothing}
                  </li>`,
                )}
              </ul>
            </details>`
          : nothing
      }
      ${
        more.length > 0 && !this.stopped
          ? html`<details>
              <summary>${this.say('more')}</summary>
              <ul class="more">
                ${more.map(
                  ({ shoe, boxes: [fit] }) => html`<li>
                    <span>${shoe.name}</span>
                    ${fit ? html`<span class="soft">${apart(boxSaid(fit.box, this.first, words))}</span>` : nothing}
                    ${this.pullButton(shoe.id, shoe.name)}
                  </li>`,
                )}
              </ul>
            </details>`
          : nothing
      }
    </section>`;
  }

  private whatIf({ whatIf, entries, more }: LineUp) {
    const shoe = [...entries, ...more].find((entry) => entry.shoe.id === whatIf?.shoe)?.shoe;
    if (!whatIf || !shoe) return nothing;
    const { words } = this;
    const question = fromText(whatIf.property ? `${whatIf.question}:${whatIf.property}` : whatIf.question, words);
    const data = { answer: optionText(whatIf, words), question, shoe: shoe.name };
    return html`<p class="soft">${words.say(whatIf.without ? 'what-if.without' : 'what-if.instead', data)}</p>`;
  }

  private pair(pair: BenchPair) {
    const { id, name } = pair.entry.shoe;
    return html`<li class="pair" data-shoe=${id}>
      ${pairSaid(pair, this.work, this)}
      ${this.asking === id ? this.askAside(id) : this.pairButtons(id, name)}
    </li>`;
  }

  private pairButtons(id: string, name: string) {
    return html`<div class="line pair-acts">
      <label class="check"
        ><input
          type="checkbox"
          .checked=${this.compared.includes(id)}
          @change=${(event: Event) => this.compare(id, (event.target as HTMLInputElement).checked)}
        /><span>${this.say('compare')}</span></label
      >
      <button type="button" class="link" aria-label=${this.say('asideWhat', { shoe: name })} @click=${() => (this.asking = id)}>
        ${this.say('setAside')}
      </button>
    </div>`;
  }

  private askAside(shoe: string) {
    return html`<div class="ask-aside" role="group" aria-label=${this.say('asideWhy')}>
      <p><strong>${this.say('asideWhy')}</strong></p>
      <lw-reason
        .reasons=${ASIDE_REASONS}
        .words=${this.words}
        @reason=${(event: CustomEvent<string>) => this.setAside(shoe, event.detail)}
        @kept=${() => {
          this.asking = '';
        }}
      ></lw-reason>
    </div>`;
  }

  private aside() {
    const { aside } = this.notes;
    if (aside.length === 0) return nothing;
    return html`<section>
      <h2>${this.say('aside')}</h2>
      <ul class="aside-list">
        ${aside.map(
          ({ shoe, reason }) => html`<li>
            <span>${this.work.asideNames[shoe] ?? shoe}: ${keptReason(reason, this.words)}</span>
            <button type="button" class="link" @click=${() => this.bringBack(shoe)}>${this.say('bringBack')}</button>
          </li>`,
        )}
      </ul>
    </section>`;
  }

  private pullButton(id: string, name: string) {
    return html`<button type="button" class="link" aria-label=${this.say('pullWhat', { shoe: name })} @click=${() => this.pullIn(id)}>
      ${this.say('pull')}
    </button>`;
  }

  private pullInForm() {
    const { found } = this;
    const shown = new Set(pairsOn(this.work).map(({ entry }) => entry.shoe.id));
    return html`<section class="pull-in">
      <h2>${this.say('pullTitle')}</h2>
      <label class="field"
        ><span>${this.say('pullLabel')}</span
        ><input
          type="search"
          autocomplete="off"
          @input=${(event: Event) => this.search((event.target as HTMLInputElement).value)}
      /></label>
      ${found ? html`<p role="status" class="soft">${this.words.say('screen.found', { count: found.length })}</p>` : nothing}
      <ul class="more">
        ${(found ?? []).map(
          ({ id, name, box }) => html`<li>
            <span>${name}</span>
            <span class="soft">${box ? apart(boxSaid(box, this.first, this.words)) : this.say('noBoxInSize')}</span>
            ${shown.has(id) ? html`<span class="soft">${this.say('shownAlready')}</span>` : this.pullButton(id, name)}
          </li>`,
        )}
      </ul>
    </section>`;
  }
}
