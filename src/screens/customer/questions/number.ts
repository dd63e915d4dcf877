import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { sizeInUnit } from '../../../card/text/size-in-unit.ts';
import type { Quantity } from '../../../flow/answers.ts';
import type { NumberQuestion } from '../../../flow/format.ts';
import { QuestionElement } from './question-element.ts';
import { rareSize } from './rare-size.ts';
import { readTyped, type TypedFinding } from './read-typed.ts';

/**
 * A typed number with a choice of units. A text field, not a number field: scrolling must not change it, and a
 * comma, a fraction or a letter gets a kind, exact reply.
 */
@customElement('lw-number')
export class NumberQuestionElement extends QuestionElement<NumberQuestion> {
  /** The age told, where one was: a size that is rare at it is asked about again. */
  @property({ attribute: false }) ageBand: string | undefined;
  @state() private typed = '';
  @state() private unit = '';
  @state() private finding: TypedFinding | undefined;

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('question')) return;
    const given = typeof this.answer === 'object' ? (this.answer as Quantity) : undefined;
    this.typed = given ? this.words.number(given.value) : '';
    this.unit = given?.unit ?? this.question.units[0]?.id ?? '';
    this.finding = undefined;
  }

  private submit(event?: Event): void {
    event?.preventDefault();
    const read = readTyped(this.typed, this.unit, this.question.units);
    this.finding = 'value' in read ? rareSize({ ...read, unit: this.unit }, this.ageBand, this.question.units) : read;
    if ('value' in read && !this.finding) this.give({ value: read.value, unit: this.unit });
    else void this.updateComplete.then(() => this.querySelector<HTMLElement>('.said.error')?.focus());
  }

  private sizeText({ value, unit }: Quantity): string {
    return sizeInUnit(this.words.number(value), unit, this.words);
  }

  /** Takes a size, unit and all, in one tap: what was typed, or what was probably meant. */
  private sizeButton(size: Quantity, key: 'take' | 'rather') {
    return html`<button type="button" class="button" @click=${() => this.give(size)}>
      ${this.words.say(`screen.typed.${key}`, { size: this.sizeText(size) })}
    </button>`;
  }

  private reply({ code, data, keep, meant }: TypedFinding) {
    return html`<p class="said error" id="number-error" role="alert" tabindex="-1">
        ${this.words.say(`screen.typed.${code}`, keep ? { size: this.sizeText(keep) } : data)}
      </p>
      ${
        keep || meant
          ? html`<div class="units">
              ${keep ? this.sizeButton(keep, 'take') : nothing} ${meant ? this.sizeButton(meant, keep ? 'rather' : 'take') : nothing}
            </div>`
          : nothing
      }`;
  }

  protected override render() {
    const { finding } = this;
    return html`<form class="number" novalidate @submit=${this.submit}>
      ${finding ? this.reply(finding) : nothing}
      <fieldset>
        <legend class="visually-hidden">${this.words.say('screen.unitLegend')}</legend>
        <div class="units">
          ${this.question.units.map(
            ({ id }) => html`<label class="choice plain"
              ><input type="radio" name="unit" value=${id} .checked=${this.unit === id} @change=${() => (this.unit = id)} /><span
                >${this.words.say(`unit.${id}`)}</span
              ></label
            >`,
          )}
        </div>
      </fieldset>
      <label class="field"
        ><span>${this.words.say('screen.numberLabel')}</span
        ><input
          type="text"
          inputmode="decimal"
          autocomplete="off"
          aria-invalid=${finding ? 'true' : 'false'}
          aria-describedby=${finding ? 'number-error' : nothing}
          .value=${this.typed}
          @input=${(event: Event) => (this.typed = (event.target as HTMLInputElement).value)}
      /></label>
      ${this.foot(html`
        <button type="submit" class="button main">${this.words.say('screen.continue')}</button>
        ${
          this.question.notSure
            ? html`<button type="button" class="button" @click=${() => this.give('not-sure')}>
                ${this.words.say('screen.notSure')}
              </button>`
            : nothing
        }`)}
    </form>`;
  }
}
