import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { MEASURE_RANGES } from '../../../observation/measure-ranges.ts';
import { CHECK_LINE, correctedReading, PAPERS, type Paper } from '../../../observation/measuring-sheet.ts';
import type { Observation } from '../../../observation/observation.ts';
import type { LengthUnit } from '../../../units/length.ts';
import type { Finding } from '../../../units/result.ts';
import type { Words } from '../../../words/words.ts';
import { LightElement } from '../../parts/light-element.ts';
import { printPage } from '../../parts/print-page.ts';
import { type Side, withFoot } from './changed.ts';
import { choiceRow } from './choice-row.ts';
import './measure-field.ts';
import { findingText } from './measure-text.ts';
import { sheetPage } from './sheet-page.ts';

/** Wide enough to take what a badly scaled print measures, so that the refusal can say why. */
const LINE_RANGE = [50, 200] as const;

/** The sheet to measure at home: print it, then enter its check line and both readings, which are corrected by it. */
@customElement('lw-measure-sheet')
export class MeasureSheet extends LightElement {
  @property({ attribute: false }) observation!: Observation;
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) unit: LengthUnit = 'mm';
  @property({ attribute: false }) put!: (observation: Observation, what: string) => void;

  @state() private paper: Paper = 'a4';
  @state() private line: number | undefined;
  @state() private readings: Partial<Record<Side, number>> = {};
  /** What this sheet gave last. */
  private counted: Readonly<Partial<Record<Side, number | undefined>>> = {};

  private say(key: string): string {
    return this.words.say(`measure.sheet.${key}`);
  }

  /** Both lengths as they really are; nothing without a line, or with one that is too far off. */
  private corrected(side: Side): { readonly mm?: number; readonly findings: readonly Finding[] } {
    const reading = this.readings[side];
    if (reading === undefined || this.line === undefined) return { findings: [] };
    const { value, findings } = correctedReading(reading, this.line);
    return value === undefined ? { findings } : { mm: value, findings };
  }

  private take(change: {
    readonly line?: number | undefined;
    readonly side?: Side;
    readonly reading?: number | undefined;
  }): void {
    if ('line' in change) this.line = change.line;
    if (change.side) {
      const { [change.side]: _before, ...rest } = this.readings;
      this.readings = change.reading === undefined ? rest : { ...rest, [change.side]: change.reading };
    }
    const next = (['left', 'right'] as const).reduce((observation, side) => {
      const { mm } = this.corrected(side);
      // A length that this sheet gave goes when the sheet turns out not to be to size; one measured since stays.
      const own = this.counted[side] !== undefined && observation.feet?.[side]?.length === this.counted[side];
      if (mm === undefined && !own) return observation;
      return withFoot(observation, side, 'length', mm);
    }, this.observation);
    this.counted = { left: this.corrected('left').mm, right: this.corrected('right').mm };
    if (next !== this.observation) this.put(next, this.words.say('measure.part.sheet'));
  }

  protected override render() {
    const refusal = this.line === undefined ? [] : correctedReading(CHECK_LINE, this.line).findings;
    const refused = refusal.some(({ severity }) => severity === 'error');
    return html`<p>${this.say('lead')}</p>
      ${choiceRow(
        'sheet-paper',
        this.say('paper'),
        (Object.keys(PAPERS) as Paper[]).map((id) => ({ id, label: this.say(`paper-${id}`) })),
        this.paper,
        (id) => {
          this.paper = id as Paper;
        },
      )}
      <div class="foot">
        <button type="button" class="button main" @click=${() => printPage(sheetPage(this.paper, this.words))}>
          ${this.say('print')}
        </button>
      </div>
      <p class="soft">${this.say('full-size')}</p>
      <h3>${this.say('enter')}</h3>
      <div class="fields">
        <lw-measure-field
          .words=${this.words}
          name="sheet-line"
          label=${this.say('line')}
          .expected=${{ unit: this.unit, from: LINE_RANGE[0], to: LINE_RANGE[1] }}
          .value=${this.line}
          @measured=${(event: CustomEvent<number | undefined>) => this.take({ line: event.detail })}
        ></lw-measure-field>
        ${(['left', 'right'] as const).map((side) => this.reading(side))}
      </div>
      <div role="status">
        ${refused ? refusal.map((finding) => html`<p class="said error">${findingText(finding, this.words)}</p>`) : this.told()}
      </div>`;
  }

  private reading(side: Side) {
    const [from, to] = MEASURE_RANGES.length;
    return html`<lw-measure-field
      .words=${this.words}
      name=${`sheet-${side}`}
      label=${this.say(`reading-${side}`)}
      .expected=${{ unit: this.unit, from, to }}
      .value=${this.readings[side]}
      @measured=${(event: CustomEvent<number | undefined>) => this.take({ side, reading: event.detail })}
    ></lw-measure-field>`;
  }

  private told() {
    const sides = (['left', 'right'] as const).filter((side) => this.readings[side] !== undefined);
    if (sides.length > 0 && this.line === undefined) return html`<p class="said">${this.say('line-first')}</p>`;
    return sides.map((side) => {
      const { mm, findings } = this.corrected(side);
      if (mm === undefined) return nothing;
      return html`<p class="said" data-side=${side}>
        <span
          ><strong
            >${this.words.say('measure.sheet.counts', { side: this.words.say(`measure.${side}`), mm: this.words.number(mm) })}</strong
          >
          ${findings.map((finding) => findingText(finding, this.words))}</span
        >
      </p>`;
    });
  }
}
