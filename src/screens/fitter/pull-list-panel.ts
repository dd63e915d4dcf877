import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { pullList } from '../../shortlist/pull-list.ts';
import type { LabelSystem } from '../../stock/shoe.ts';
import type { BoxMark } from '../../stock/today.ts';
import type { Words } from '../../words/words.ts';
import type { BenchLine } from '../../worker/bench-line.ts';
import { apart } from '../parts/apart.ts';
import { LightElement } from '../parts/light-element.ts';
import { momentText } from '../parts/moment-text.ts';
import type { BenchPair } from './bench-pairs.ts';
import { printedOn } from './box-said.ts';

/** What somebody is to do to a box's marks: `undo` takes the last one back. */
export interface MarkWish {
  readonly box: string;
  readonly what: BoxMark['what'] | 'undo';
}

/** The boxes to fetch in the order of the shelves, with one tap for "not there" and "sold". */
@customElement('lw-pull-list')
export class PullListPanel extends LightElement {
  @property({ attribute: false }) work!: BenchLine;
  @property({ attribute: false }) pairs: readonly BenchPair[] = [];
  @property({ attribute: false }) marks: readonly BoxMark[] = [];
  @property({ attribute: false }) words!: Words;
  /** The size system that labels begin with. */
  @property() first: LabelSystem = 'eu';

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`bench.pull.${key}`, data);
  }

  private mark(box: string, what: MarkWish['what']): void {
    const detail: MarkWish = { box, what };
    this.dispatchEvent(new CustomEvent('mark', { detail, bubbles: true }));
  }

  protected override render() {
    const { lineUps } = this.work.line.shortlist;
    const pulled = this.work.pulledIn.map(({ entry }) => entry);
    const byHand = {
      for: 'pulled-in',
      entries: pulled,
      more: [],
      removed: [],
      ifDropped: [],
      sureness: 'none',
    } as const;
    const pulls = pullList({ lineUps: [...lineUps, byHand] });
    const letter = (shoe: string): string => this.pairs.find(({ entry }) => entry.shoe.id === shoe)?.letter ?? '';
    if (pulls.length === 0 && this.marks.length === 0) return nothing;
    return html`<section class="pull-list">
      <h2>${this.say('title')}</h2>
      <p class="soft small">${this.words.say('card.head.stock', { when: momentText(this.work.stockAsOf, this.words) })}</p>
      <ul>
        ${pulls.map(
          ({ box, name, wanted }) => html`<li data-box=${box.id}>
            <strong class="shelf">${box.place}</strong>
            <span class="what"
              ><strong>${letter(box.shoe)} ${name}</strong><span>${apart(printedOn(box, this.first, this.words).join(' · '))}</span>
              ${wanted.every(({ turn }) => turn === 2) ? html`<span class="soft">${this.say('second')}</span>` : nothing}</span
            >
            <span class="line">
              <button type="button" class="button" aria-label=${this.say('notThereWhat', { shoe: name })} @click=${() => this.mark(box.id, 'not-on-the-shelf')}>${this.say('notThere')}</button>
              <button type="button" class="button" aria-label=${this.say('soldWhat', { shoe: name })} @click=${() => this.mark(box.id, 'sold')}>${this.say('sold')}</button>
            </span>
          </li>`,
        )}
      </ul>
      ${
        this.marks.length > 0
          ? html`<details>
              <summary>${this.say('marked', { count: this.marks.length })}</summary>
              <ul class="more">
                ${this.marks.map(
                  ({ box, what }) => html`<li>
                    <span>${box}: ${this.say(what === 'sold' ? 'sold' : 'notThere')}</span>
                    <button type="button" class="link" @click=${() => this.mark(box, 'undo')}>${this.say('takeBack')}</button>
                  </li>`,
                )}
              </ul>
            </details>`
          : nothing
      }
    </section>`;
  }
}
