import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { easeInText } from '../../card/text/ease-in-text.ts';
import type { LineUp } from '../../shortlist/shortlist.ts';
import type { Box } from '../../stock/shoe.ts';
import type { BoxMark } from '../../stock/today.ts';
import { listText } from '../../units/list-text.ts';
import type { Words } from '../../words/words.ts';
import type { BenchLine, FoundShoe } from '../../worker/bench-line.ts';
import type { LineClient } from '../../worker/line-client.ts';
import { LightElement } from '../parts/light-element.ts';
import { ChangeEvent } from './bench-event.ts';
import { type BenchPair, forText, labelsOf, pairsOn } from './bench-pairs.ts';
import { type BenchNotes, NO_NOTES } from './bench-ticket.ts';
import './compare-panel.ts';
import './reason-form.ts';
import { keptReason } from '../../card/text/kept-reason.ts';
import './pull-list-panel.ts';
import { widthText } from './try-on/box-text.ts';
import { fromText, mustText, needName, optionText } from './why-text.ts';

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
  @property({ attribute: false }) line!: LineClient;
  /** The hold stops the line: nothing is pulled in either. */
  @property({ type: Boolean }) stopped = false;

  @state() private asking = '';
  @state() private compared: readonly string[] = [];
  @state() private found: readonly FoundShoe[] | undefined;

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

  private pullIn(shoe: string): void {
    this.found = undefined;
    this.changeNotes((notes) => ({
      ...notes,
      aside: notes.aside.filter((each) => each.shoe !== shoe),
      pulledIn: [...new Set([...notes.pulledIn, shoe])],
    }));
  }

  private async search(typed: string): Promise<void> {
    this.found = typed.trim() === '' ? undefined : await this.line.findShoes(typed);
  }

  private compare(shoe: string, on: boolean): void {
    this.compared = on ? [...this.compared, shoe].slice(-MOST_COMPARED) : this.compared.filter((id) => id !== shoe);
  }

  protected override render() {
    const pairs = pairsOn(this.work);
    const { lineUps } = this.work.line.shortlist;
    const pulled = pairs.filter(({ fails }) => fails !== undefined);
    const chosen = pairs.filter(({ entry }) => this.compared.includes(entry.shoe.id));
    return html`${lineUps.length === 0 ? html`<p class="said">${this.say('none')}</p>` : nothing}
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
          ? html`<lw-compare .pairs=${chosen} .profile=${this.work.line.profile} .words=${this.words}></lw-compare>`
          : pairs.length > 1
            ? html`<p class="soft">${this.say('compareHow')}</p>`
            : nothing
      }
      ${this.stopped ? nothing : this.pullInForm()}
      <lw-pull-list .work=${this.work} .pairs=${pairs} .marks=${this.marks} .words=${this.words}></lw-pull-list>`;
  }

  private lineUp(lineUp: LineUp, pairs: readonly BenchPair[]) {
    const { words } = this;
    const own = pairs.filter(({ entry }) => lineUp.entries.some(({ shoe }) => shoe.id === entry.shoe.id));
    const must = (attribute: string, value: string | number | boolean) => mustText({ attribute, value }, words);
    return html`<section class="line-up">
      <h2>${lineUp.for === 'all' ? this.say('title') : words.say('card.for', { for: forText(lineUp.for, words) })}</h2>
      <ol class="pairs">
        ${own.map((pair) => this.pair(pair))}
      </ol>
      <p class="soft">${words.say(`sureness.${lineUp.sureness}`)}</p>
      ${this.whatIf(lineUp)}
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
        lineUp.more.length > 0 && !this.stopped
          ? html`<details>
              <summary>${this.say('more')}</summary>
              <ul class="more">
                ${lineUp.more.map(({ shoe }) => html`<li>${shoe.name} ${this.pullButton(shoe.id, shoe.name)}</li>`)}
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
    const { words } = this;
    const { entry, letter, fails } = pair;
    const { shoe, easeIn } = entry;
    const said = new Set(entry.misgivings.map(({ code }) => code));
    const unknown = entry.unknown.filter((key) => !said.has(`${key}-unknown`)).map((key) => needName(key, words));
    const fits = fails?.map((must) =>
      must === 'size'
        ? words.say('lacks.must.size')
        : mustText({ attribute: must, value: mustValue(this.work, must) }, words),
    );
    return html`<li class="pair" data-shoe=${shoe.id}>
      <h3><span class="letter">${letter}</span> <span>${shoe.name}</span></h3>
      <p class="soft">${words.say(`part.${entry.part}`)}</p>
      ${fits && fits.length > 0 ? html`<p><strong>${this.say('fails', { what: listText(fits, words.language, 'and') })}</strong></p>` : nothing}
      <ul class="boxes">
        ${entry.boxes.slice(0, 2).map(({ box }, at) => this.box(box, at > 0))}
      </ul>
      <ul class="reasons">
        ${entry.reasons.map(
          ({ code }) => html`<li>
            <svg viewBox="0 0 20 16" aria-hidden="true"><path d="M2 8l6 6L18 2" /></svg><span>${words.say(`reason.${code}`)}</span>
          </li>`,
        )}
        ${entry.misgivings.map(
          ({ code }) =>
            html`<li><span class="but">${words.say('card.pair.but')}</span><span>${words.say(`misgiving.${code}`)}</span></li>`,
        )}
      </ul>
      ${unknown.length > 0 ? html`<p class="soft small">${words.say('card.pair.unknown', { what: listText(unknown, words.language) })}</p>` : nothing}
      ${easeIn ? this.easeIn(pair) : nothing}
      ${this.asking === shoe.id ? this.askAside(shoe.id) : this.pairButtons(shoe.id, shoe.name)}
    </li>`;
  }

  /** Read at a glance from the shelf: one label and the place, then what else is printed on the box. */
  private box(box: Box, second: boolean) {
    const { words } = this;
    const [first = '', ...others] = labelsOf(box, words);
    const rest = [...others, ...widthText(box, words)].join(' · ');
    return html`<li>
      <strong>${second ? `${this.say('then')} ` : ''}${first}</strong>
      <strong class="shelf">${words.say('card.fetch.shelf', { place: box.place })}</strong>
      ${rest ? html`<span class="soft">${rest}</span>` : nothing}
    </li>`;
  }

  private easeIn({ letter, entry }: BenchPair) {
    const { words } = this;
    const { easeIn, shoe } = entry;
    if (!easeIn) return nothing;
    const pair = { letter, shoe: shoe.id, name: shoe.name, part: entry.part, lastPair: false, boxes: [] };
    const text = easeInText(
      [
        {
          for: 'all',
          sureness: 'none',
          ifDropped: [],
          pairs: [{ ...pair, reasons: [], misgivings: [], unknown: [], easeIn }],
        },
      ],
      words,
    );
    return html`<details>
      <summary>${text.heading}</summary>
      <p>${easeIn.triggers.map((trigger) => words.say(`easeIn.${trigger}`)).join(' ')}</p>
      ${easeIn.minimalistRise === undefined ? nothing : html`<p class="soft small">${words.say('easeIn.index', { rise: Math.round(easeIn.minimalistRise) })}</p>`}
      <p class="small">${text.caption} ${text.weeks
        .slice(1)
        .map((week, at) => `${text.weeks[0]} ${week}: ${text.rows[0]?.[at + 1] ?? ''}`)
        .join(' · ')}</p>
    </details>`;
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
        ${(found ?? []).map(({ id, name }) => html`<li>${name} ${this.pullButton(id, name)}</li>`)}
      </ul>
    </section>`;
  }
}

const mustValue = ({ line }: BenchLine, must: string): string | number | boolean =>
  line.profile.musts.find(({ attribute }) => attribute === must)?.value ?? String(line.profile.facts[must] ?? '');
