import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { fromMillimetres, LENGTH_UNITS, type LengthUnit } from '../../../units/length.ts';
import { fromGrams } from '../../../units/mass.ts';
import type { Finding } from '../../../units/result.ts';
import { type Expected, type MeasureUnit, readMeasure } from '../../../units/typed-measure.ts';
import type { Words } from '../../../words/words.ts';
import { LightElement } from '../../parts/light-element.ts';
import { echoText, findingText, plainNumber, unitText } from './measure-text.ts';

/**
 * One measure to type, in any unit, accepted as soon as the field is left. What was understood is said back; what was
 * not is asked about and counts for nothing, and the measure before stays. Fires `measured` with millimetres or grams.
 */
@customElement('lw-measure-field')
export class MeasureField extends LightElement {
  @property({ attribute: false }) words!: Words;
  /** Unique on the page. */
  @property() name = '';
  @property() label = '';
  /** Hides the label from sight where a table's headings say it. */
  @property({ type: Boolean }) quiet = false;
  @property({ attribute: false }) expected!: Expected;
  @property({ attribute: false }) value: number | undefined;
  /** What is odd about it beside the other measures. */
  @property({ attribute: false }) findings: readonly Finding[] = [];

  @state() private typed = '';
  @state() private echo = '';
  @state() private refused: readonly Finding[] = [];
  private accepted: number | undefined;

  private get base(): MeasureUnit {
    return isLength(this.expected.unit) ? 'mm' : 'g';
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    const other = changed.has('value') && this.value !== this.accepted;
    const unit =
      changed.has('expected') && (changed.get('expected') as Expected | undefined)?.unit !== this.expected.unit;
    if ((other || unit) && this.refused.length === 0) this.show();
    else if (other) {
      this.refused = [];
      this.show();
    }
  }

  private show(): void {
    const { value, expected } = this;
    this.accepted = value;
    this.echo = '';
    if (value === undefined) this.typed = '';
    else {
      const shown = isLength(expected.unit) ? fromMillimetres(value, expected.unit) : fromUnit(value, expected.unit);
      this.typed = plainNumber(shown, this.words);
      this.echo = echoText({ value, typed: { value: shown, unit: expected.unit } }, this.base, this.words);
    }
  }

  private accept(text: string): void {
    this.typed = text;
    const { value, findings } = readMeasure(text, this.expected);
    this.refused = findings;
    this.echo = value === undefined ? '' : echoText(value, this.base, this.words);
    if (findings.length > 0) return;
    const measured = value === undefined ? undefined : Math.round(value.value * 10) / 10;
    if (measured === this.accepted) return;
    this.accepted = measured;
    this.dispatchEvent(new CustomEvent<number | undefined>('measured', { detail: measured }));
  }

  protected override render() {
    const { name, words, refused } = this;
    const odd = this.findings.filter(({ severity }) => severity === 'error');
    const wrong = refused.length > 0 || odd.length > 0;
    return html`<label class="measure-field" data-odd=${wrong ? 'true' : nothing}
        ><span class=${this.quiet ? 'visually-hidden' : ''}>${this.label}</span
        ><span class="typed"
          ><input
            type="text"
            inputmode="decimal"
            autocomplete="off"
            name=${name}
            aria-invalid=${wrong ? 'true' : 'false'}
            aria-describedby=${`${name}-said`}
            .value=${this.typed}
            @input=${(event: Event) => {
              this.typed = (event.target as HTMLInputElement).value;
            }}
            @change=${() => this.accept(this.typed)}
            @keydown=${(event: KeyboardEvent) => event.key === 'Enter' && this.accept(this.typed)}
          />${/\p{L}|["”″]/u.test(this.typed) ? nothing : html`<span aria-hidden="true">${unitText(this.expected.unit, words)}</span>`}</span
      ></label>
      <div id=${`${name}-said`} class="field-said" role="status">
        ${this.echo ? html`<p class="soft echo">${this.echo}</p>` : nothing}
        ${refused.map((finding) => this.refusal(finding))}
        ${refused.length > 0 ? nothing : odd.map((finding) => html`<p class="odd">${findingText(finding, words)}</p>`)}
      </div>`;
  }

  private refusal(finding: Finding) {
    const { words, value } = this;
    const guess = finding.data?.['guess'];
    const unit = finding.data?.['guessUnit'];
    return html`<p class="odd">${findingText(finding, words)}</p>
      ${
        guess === undefined || unit === undefined
          ? nothing
          : html`<button
              type="button"
              class="button"
              @click=${() => this.accept(`${plainNumber(Number(guess), words)} ${unit}`)}
            >
              ${words.say('measure.yes-guess', { guess: plainNumber(Number(guess), words), unit: unitText(String(unit), words) })}
            </button>`
      }
      ${
        value === undefined
          ? nothing
          : html`<p class="soft">
              ${words.say('measure.still', { value: `${plainNumber(value, words)} ${unitText(this.base, words)}` })}
            </p>`
      }`;
  }
}

const isLength = (unit: MeasureUnit): unit is LengthUnit => (LENGTH_UNITS as readonly string[]).includes(unit);
const fromUnit = (grams: number, unit: MeasureUnit): number => (isLength(unit) ? grams : fromGrams(grams, unit));
