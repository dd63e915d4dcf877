import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { nextBox } from '../../../sizing/next-box.ts';
import type { Box, LabelSystem } from '../../../stock/shoe.ts';
import { listText } from '../../../units/list-text.ts';
import { FIT_NOTES, TASK_FELT } from '../../../visit/fit-notes.ts';
import type { TryOn } from '../../../visit/visit.ts';
import type { Words } from '../../../words/words.ts';
import { LightElement } from '../../parts/light-element.ts';
import { boxSaid } from '../box-said.ts';
import { choiceRow } from '../measure/choice-row.ts';
import { optionText } from '../why-text.ts';
import { readComfort } from './comfort.ts';
import type { PairToTry } from './pairs-to-try.ts';
import { earlierOf, inAnotherBox, recordOf, withNote, withRecord } from './records.ts';
import './rub-spots.ts';
import type { TasksToTry } from './tasks-to-try.ts';

/** Characters. Our choice: a line on the fitter's copy. */
const NOTE_LENGTH = 120;
const SIZES = ['too-small', 'right', 'too-big'] as const;

/** What one pair was like on the feet. Everything is optional but the box. */
@customElement('lw-pair-record')
export class PairRecord extends LightElement {
  @property({ attribute: false }) pair!: PairToTry;
  @property({ attribute: false }) tryOns: readonly TryOn[] = [];
  /** All boxes of this model on hand, as far as they are known here. */
  @property({ attribute: false }) stocked: readonly Box[] = [];
  @property({ attribute: false }) tasks!: TasksToTry;
  @property({ type: Boolean }) uneven = false;
  /** The size system that labels begin with. */
  @property() first: LabelSystem = 'eu';
  @property({ attribute: false }) words!: Words;
  /** Takes the changed records, with a name for undoing them. */
  @property({ attribute: false }) put!: (tryOns: readonly TryOn[], what: string) => void;

  @state() private comfortRefused = false;

  private get record(): TryOn | undefined {
    return recordOf(this.tryOns, this.pair.shoe.id);
  }

  private get boxes(): readonly Box[] {
    const listed = new Set(this.pair.boxes.map(({ id }) => id));
    const worn = this.stocked.filter(({ id }) => id === this.record?.box && !listed.has(id));
    return [...this.pair.boxes, ...worn];
  }

  private get box(): Box | undefined {
    return this.boxes.find(({ id }) => id === this.record?.box) ?? this.pair.boxes[0];
  }

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`try-on.${key}`, data);
  }

  private change(change: Parameters<typeof withRecord>[3], what: string): void {
    const box = this.record?.box ?? this.box?.id;
    if (box === undefined) return;
    this.put(withRecord(this.tryOns, this.pair.shoe.id, box, change), `${this.pair.letter}: ${what}`);
  }

  private note(key: string, value: string, what: string): void {
    this.change({ notes: withNote(this.record, key, value || undefined) }, what);
  }

  protected override render() {
    const { pair, record } = this;
    const heading = html`<h2 id="try-on-pair" tabindex="-1"><span class="letter">${pair.letter}</span> ${pair.shoe.name}</h2>`;
    if (this.box === undefined) return html`${heading}<p class="said">${this.say('no-box')}</p>`;
    return html`${heading}
      <div class="rows">${this.boxRow()}${this.sizeRow()}</div>
      <div class="rows">
        ${(Object.keys(FIT_NOTES) as (keyof typeof FIT_NOTES)[]).map((key) =>
          this.noteRow(
            key,
            this.say(`note.${key}.name`),
            FIT_NOTES[key].map((id) => [id, this.say(`note.${key}.${id}`)] as const),
          ),
        )}
      </div>
      ${this.taskRows()}
      <h3>${this.say('rubs')}</h3>
      <lw-rub-spots
        .rubs=${record?.rubs ?? []}
        .words=${this.words}
        @rubs=${(event: CustomEvent<readonly string[]>) => this.change({ rubs: event.detail }, this.say('rubs'))}
      ></lw-rub-spots>
      ${this.comfort()} ${this.freeNote()}`;
  }

  private boxRow() {
    const { words, pair } = this;
    const earlier = earlierOf(this.tryOns, pair.shoe.id);
    const all = [...this.boxes, ...this.stocked];
    return html`${choiceRow(
      'try-on-box',
      this.say('box'),
      this.boxes.map((box) => ({ id: box.id, label: boxSaid(box, this.first, words) })),
      // Where there is but one, nobody has to say which.
      this.record?.box ?? (this.boxes.length === 1 ? (this.box?.id ?? '') : ''),
      (box) => this.put(withRecord(this.tryOns, pair.shoe.id, box), `${pair.letter}: ${this.say('box')}`),
    )}
    ${earlier.map((each) => {
      const box = all.find(({ id }) => id === each.box);
      return html`<p class="soft">
        ${this.say('before', { box: box ? boxSaid(box, this.first, words) : each.box, felt: this.say(`size.${each.size ?? 'not-said'}`) })}
      </p>`;
    })}`;
  }

  private sizeRow() {
    const { record, box } = this;
    const name = this.say('size.name');
    const wrong = record?.size === 'too-small' || record?.size === 'too-big';
    return html`${choiceRow(
      'try-on-size',
      name,
      SIZES.map((id) => ({ id, label: this.say(`size.${id}`) })),
      record?.size ?? '',
      (size) => this.change({ size: size as (typeof SIZES)[number] }, name),
    )}
    ${wrong && box ? this.next(box, record.size === 'too-small' ? 'longer' : 'shorter') : nothing}`;
  }

  /** "Fetch the next size up": the box itself, never a converted label. */
  private next(tried: Box, which: 'longer' | 'shorter') {
    const { pair, words } = this;
    const known = [...new Map([...pair.boxes, ...this.stocked].map((box) => [box.id, box])).values()];
    const box = nextBox(known, pair.shoe, tried, which);
    const what = this.say(`next.${which}`);
    return html`<div class="said" role="status" data-next=${box?.id ?? 'none'}>
      <p>${box ? `${what}: ${boxSaid(box, this.first, words)}` : this.say(`next.none-${which}`)}</p>
      ${
        box
          ? html`<button
              type="button"
              class="button"
              @click=${() => this.put(inAnotherBox(this.tryOns, pair.shoe.id, box.id), `${pair.letter}: ${what}`)}
            >
              ${this.say('next.fetched')}
            </button>`
          : nothing
      }
    </div>`;
  }

  /** A row of words to tap; the first takes a note back. */
  private noteRow(key: string, name: string, choices: readonly (readonly [id: string, label: string])[]) {
    return choiceRow(
      `try-on-${key}`,
      name,
      [{ id: '', label: this.say('not-noted') }, ...choices.map(([id, label]) => ({ id, label }))],
      this.record?.notes[key] ?? '',
      (id) => this.note(key, id, name),
    );
  }

  private taskRows() {
    const { tasks, words } = this;
    return html`<h3>${this.say('tasks')}</h3>
      <p class="soft">${this.say(this.uneven ? 'stop-uneven' : 'stop')}</p>
      ${tasks.held > 0 ? html`<p class="said" data-held>${this.say('held', { count: tasks.held })} ${this.heldWhy()}</p>` : nothing}
      <div class="rows tasks">
        ${tasks.open.map(
          (task) => html`<div data-task=${task}>
            ${this.noteRow(
              `task-${task}`,
              words.say(`task.${task}.name`),
              TASK_FELT.map((id) => [id, this.say(`task.${id}`)] as const),
            )}
            <p class="soft">${words.say(`task.${task}.feel`)}</p>
          </div>`,
        )}
      </div>
      ${
        tasks.mayBeUneven
          ? html`<label class="choice plain uneven"
              ><input
                type="checkbox"
                name="uneven"
                .checked=${this.uneven}
                @change=${(event: Event) =>
                  this.dispatchEvent(
                    new CustomEvent<boolean>('uneven', { detail: (event.target as HTMLInputElement).checked }),
                  )}
              /><span>${this.say('uneven')}</span></label
            >`
          : html`<p class="soft" data-even>${this.say('even-only')}</p>`
      }`;
  }

  /** The answers that hold a try back, in their own words. */
  private heldWhy(): string {
    const why = this.tasks.because.map((from) => {
      const [question = '', option] = from.split(':');
      return option === undefined ? this.say('held-unasked') : optionText({ question, option }, this.words);
    });
    return this.say('held-why', { why: listText([...new Set(why)], this.words.language, 'and') });
  }

  /** Whatever else is to be told of this pair, in a few words. */
  private freeNote() {
    return html`<label class="field free-note"
      ><span>${this.say('free-note')}</span
      ><input
        type="text"
        autocomplete="off"
        name="try-on-note"
        maxlength=${NOTE_LENGTH}
        .value=${this.record?.note ?? ''}
        @change=${(event: Event) => {
          const typed = (event.target as HTMLInputElement).value.trim().slice(0, NOTE_LENGTH);
          this.change({ note: typed || undefined }, this.say('free-note'));
        }}
    /></label>`;
  }

  private comfort() {
    const { record, comfortRefused } = this;
    return html`<div class="comfort">
      <label class="measure-field" data-odd=${comfortRefused ? 'true' : nothing}
        ><span>${this.say('comfort.name')}</span
        ><input
          type="text"
          inputmode="numeric"
          autocomplete="off"
          name="try-on-comfort"
          aria-invalid=${comfortRefused ? 'true' : 'false'}
          aria-describedby="comfort-how comfort-said"
          .value=${record?.comfort === undefined ? '' : String(record.comfort)}
          @change=${(event: Event) => this.typedComfort((event.target as HTMLInputElement).value)}
      /></label>
      <p id="comfort-how" class="soft">${this.say('comfort.how')}</p>
      <p id="comfort-said" role="status">
        ${comfortRefused ? html`<strong>${this.words.say('finding.comfort-unclear')}</strong>` : nothing}
      </p>
    </div>`;
  }

  private typedComfort(text: string): void {
    const { value, findings } = readComfort(text);
    this.comfortRefused = findings.length > 0;
    if (findings.length === 0) this.change({ comfort: value }, this.say('comfort.name'));
  }
}
