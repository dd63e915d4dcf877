import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { SHOE_RANGES } from '../../../observation/check-observation.ts';
import { INSOLE_RANGE, TOE_PRINT_GAP_RANGE } from '../../../observation/measure-ranges.ts';
import type { Observation, OldPair } from '../../../observation/observation.ts';
import { oldPairNotes } from '../../../observation/old-pair-notes.ts';
import type { LengthUnit } from '../../../units/length.ts';
import type { Finding } from '../../../units/result.ts';
import { readObservation } from '../../../visit/read-observation.ts';
import type { Words } from '../../../words/words.ts';
import { LightElement } from '../../parts/light-element.ts';
import { withOldPair, withShoe } from './changed.ts';
import { choiceRow } from './choice-row.ts';
import './measure-field.ts';
import { findingText } from './measure-text.ts';

const LENGTHS = { insoleLength: INSOLE_RANGE, toePrintGap: TOE_PRINT_GAP_RANGE } as const;
/** Choices of each sign of wear, with the words they are under. */
const WEAR = {
  spill: ['side', ['none', 'inner', 'outer', 'both']],
  bulge: ['side', ['none', 'inner', 'outer']],
  heelLining: ['lining', ['whole', 'worn', 'torn']],
  soleWear: ['sole', ['even', 'outer-heel', 'inner-heel', 'forefoot', 'toe', 'worn-out']],
} as const;
const FIGURES = ['mass', 'heel-stack', 'forefoot-stack', 'drop'] as const;

/** What today's pair shows: insole, wear, and figures of its own. Notes wear and diagnoses nothing. */
@customElement('lw-measure-old-pair')
export class MeasureOldPair extends LightElement {
  @property({ attribute: false }) observation!: Observation;
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) unit: LengthUnit = 'mm';
  @property({ attribute: false }) put!: (observation: Observation, what: string) => void;

  private get pair(): OldPair {
    return this.observation.oldPair ?? {};
  }

  protected override render() {
    const { words, pair } = this;
    const notes = oldPairNotes(pair);
    return html`<p class="soft">${words.say('measure.old-pair.lead')}</p>
      <div class="fields">${(['insoleLength', 'toePrintGap'] as const).map((key) => this.length(key))}</div>
      <div class="rows">${(Object.keys(WEAR) as (keyof typeof WEAR)[]).map((key) => this.wear(key))}</div>
      <section class="notes" role="status">
        ${
          notes.length > 0
            ? html`<h3>${words.say('measure.old-pair.shows')}</h3>
                <ul>
                  ${notes.map((note) => html`<li>${words.say(`observation.note.${note}`)}</li>`)}
                </ul>`
            : nothing
        }
      </section>
      <h3>${words.say('measure.old-pair.measured')}</h3>
      <p class="soft">${words.say('measure.old-pair.measured-how')}</p>
      <div class="fields">${FIGURES.map((key) => this.figure(key))}</div>
      ${contradictions(pair).map((finding) => html`<p class="said" role="status">${findingText(finding, words)}</p>`)}`;
  }

  private length(key: keyof typeof LENGTHS) {
    const label = this.words.say(`observation.old-pair.${key}`);
    const [from, to] = LENGTHS[key];
    return this.field(key, label, { unit: this.unit, from, to }, this.pair[key], (value) =>
      this.put(withOldPair(this.observation, key, value), label),
    );
  }

  private figure(key: (typeof FIGURES)[number]) {
    const label = this.words.say(`attribute.${key}.name`);
    const [from, to] = SHOE_RANGES[key];
    const unit = key === 'mass' ? 'g' : this.unit;
    return this.field(key, label, { unit, from: Math.max(0, from), to }, this.pair.measured?.[key], (value) =>
      this.put(withShoe(this.observation, key, value), label),
    );
  }

  private field(
    key: string,
    label: string,
    expected: { readonly unit: LengthUnit | 'g'; readonly from: number; readonly to: number },
    value: number | undefined,
    take: (value: number | undefined) => void,
  ) {
    return html`<lw-measure-field
      .words=${this.words}
      name=${`old-pair-${key}`}
      label=${label}
      .expected=${expected}
      .value=${value}
      @measured=${(event: CustomEvent<number | undefined>) => take(event.detail)}
    ></lw-measure-field>`;
  }

  private wear(key: keyof typeof WEAR) {
    const { words } = this;
    const [group, ids] = WEAR[key];
    const name = words.say(`observation.old-pair.${key}`);
    const choices = [
      { id: '', label: words.say('measure.old-pair.not-looked') },
      ...ids.map((id) => ({ id, label: words.say(`observation.${group}.${id}`) })),
    ];
    return choiceRow(`old-pair-${key}`, name, choices, this.pair[key] ?? '', (id) =>
      this.put(withOldPair(this.observation, key, (id || undefined) as undefined), name),
    );
  }
}

/** Figures of one shoe that cannot all be true, as the reader of stored visits asks about them. */
function contradictions({ measured }: OldPair): readonly Finding[] {
  const findings: Finding[] = [];
  readObservation({ oldPair: { measured: measured ?? {} } }, [], (_, { code, data }) => {
    findings.push({ code, severity: 'error', ...(data && { data }) });
  });
  return findings;
}
