import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { boxOf } from '../../card/pairs.ts';
import { labelsOf } from '../../card/text/box-text.ts';
import { available, type BoxMark } from '../../stock/today.ts';
import type { Words } from '../../words/words.ts';
import type { LineClient } from '../../worker/line-client.ts';
import type { BoxSearch, FoundBox, FoundBoxes } from '../../worker/stock-service.ts';
import { apart } from '../parts/apart.ts';
import { LightElement } from '../parts/light-element.ts';
import { countText } from './count-text.ts';

/** What somebody did to a box; `undo` takes the last one back. */
export interface MarkWish {
  readonly box: string;
  readonly what: BoxMark['what'] | 'undo';
}

const FIELDS = ['name', 'size', 'place'] as const;
const NOTHING: BoxSearch = { name: '', size: '', place: '' };

/** Boxes by model, size and shelf, with one tap for "not on the shelf" and "sold", for the day. */
@customElement('lw-stock-boxes')
export class BoxesPanel extends LightElement {
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) line!: LineClient;
  @property({ attribute: false }) marks: readonly BoxMark[] = [];
  /** A new number asks the boxes anew. */
  @property({ attribute: false }) turn = 0;

  @state() private search: BoxSearch = NOTHING;
  @state() private boxes: FoundBoxes | undefined;
  private asked = 0;

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('turn') || changed.has('search')) void this.find();
  }

  /** Of answers that overtake each other only the newest counts. */
  private async find(): Promise<void> {
    this.asked += 1;
    const mine = this.asked;
    const boxes = await this.line.findBoxes(this.search);
    if (mine === this.asked) this.boxes = boxes;
  }

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`shop.boxes.${key}`, data);
  }

  private mark(box: string, what: MarkWish['what']): void {
    const detail: MarkWish = { box, what };
    this.dispatchEvent(new CustomEvent('mark', { detail }));
  }

  protected override render() {
    const { boxes } = this;
    const empty = FIELDS.every((field) => this.search[field].trim() === '');
    return html`<section class="boxes-of">
      <h2>${this.say('title')}</h2>
      <form role="search" class="search" @submit=${(event: Event) => event.preventDefault()}>
        ${FIELDS.map(
          (field) => html`<label class="field"
            ><span>${this.say(field)}</span
            ><input
              type="search"
              name=${field}
              autocomplete="off"
              spellcheck="false"
              maxlength="60"
              .value=${this.search[field]}
              @input=${(event: Event) => {
                this.search = { ...this.search, [field]: (event.target as HTMLInputElement).value };
              }}
          /></label>`,
        )}
      </form>
      ${this.marked()}
      <p role="status" class="soft">
        ${boxes === undefined ? nothing : boxes.of > boxes.found.length ? this.say('some', { shown: boxes.found.length, of: boxes.of }) : countText(this.words, 'shop.boxes.all', boxes.of)}
      </p>
      ${
        boxes && !(empty && boxes.of > boxes.found.length)
          ? html`<ul class="box-rows">
              ${repeat(
                boxes.found,
                ({ box }) => box.id,
                (found) => this.row(found),
              )}
            </ul>`
          : nothing
      }
    </section>`;
  }

  private row({ box, name, shelf }: FoundBox) {
    const { words } = this;
    const own = this.marks.filter((mark) => mark.box === box.id);
    const labels = labelsOf(boxOf(box, 'eu'), words).join(' · ');
    const what = `${name} · ${labels}`;
    const act = (wish: MarkWish['what'], label: string, look = 'button') => html`<button
      type="button"
      class=${look}
      data-mark=${wish}
      aria-label=${`${label}: ${what}`}
      @click=${() => this.mark(box.id, wish)}
    >
      ${label}
    </button>`;
    return html`<li data-box=${box.id}>
      <strong class="shelf">${box.place || '–'}</strong>
      <span class="what">
        <strong>${name}</strong>
        <span>${apart(labels)}${box.width ? ` · ${words.say(`stock.width.${box.width}`)}` : nothing} · <span class="soft">${words.say(`stock.shelf.${shelf}`)}</span></span>
      </span>
      <span class="here">
        <span>${words.say('stock.on-hand', { count: available(box) })}</span>
        ${box.reserved > 0 ? html`<span class="soft">${box.reserved} ${words.say('stock.reserved')}</span>` : nothing}
        ${
          own.length > 0
            ? html`<span class="own"
                >${own.map((mark) => words.say(`stock.${mark.what}`)).join(' · ')} ${act('undo', words.say('stock.take-back'), 'link')}</span
              >`
            : nothing
        }
      </span>
      <span class="acts">
        ${available(box) > 0 ? html`${act('not-on-the-shelf', words.say('stock.not-on-the-shelf'))} ${act('sold', words.say('stock.sold'))}` : nothing}
      </span>
    </li>`;
  }

  private marked() {
    if (this.marks.length === 0) return nothing;
    return html`<details class="marked">
      <summary>${this.say('marked', { count: this.marks.length })}</summary>
      <ul>
        ${this.marks.map(
          ({ box, what, at }) => html`<li>
            <span>${at.slice(11, 16)} · ${box} · ${this.words.say(`stock.${what}`)}</span>
            <button type="button" class="link" aria-label=${`${this.words.say('stock.take-back')}: ${box}`} @click=${() => this.mark(box, 'undo')}>
              ${this.words.say('stock.take-back')}
            </button>
          </li>`,
        )}
      </ul>
    </details>`;
  }
}
