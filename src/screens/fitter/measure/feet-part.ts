import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { MEASURE_RANGES } from '../../../observation/measure-ranges.ts';
import { FOOT_MEASURES, type FootMeasure, type Observation } from '../../../observation/observation.ts';
import { questionFeet } from '../../../observation/question-feet.ts';
import type { Facts } from '../../../profile/profile.ts';
import { SHELVES, type Shelf } from '../../../stock/shoe.ts';
import type { LengthUnit } from '../../../units/length.ts';
import type { Finding } from '../../../units/result.ts';
import type { Words } from '../../../words/words.ts';
import '../../parts/drawing.ts';
import { LightElement } from '../../parts/light-element.ts';
import { type Side, USUAL, withFeet, withFoot } from './changed.ts';
import { choiceRow } from './choice-row.ts';
import './measure-field.ts';
import { findingText } from './measure-text.ts';

const CHOICES = {
  posture: ['standing', 'seated', 'one-foot'],
  sock: ['worn-sock', 'thin-sock', 'barefoot'],
  time: ['', 'morning', 'midday', 'late'],
} as const;

/** Both feet, measure by measure, each beside a drawing of where gauge or tape goes. One foot is enough. */
@customElement('lw-measure-feet')
export class MeasureFeet extends LightElement {
  @property({ attribute: false }) observation!: Observation;
  @property({ attribute: false }) facts!: Facts;
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) unit: LengthUnit = 'mm';
  /** Takes a change, with its name for undoing it. */
  @property({ attribute: false }) put!: (observation: Observation, what: string) => void;

  protected override render() {
    const { words } = this;
    const { feet } = this.observation;
    const shelf: Shelf = SHELVES.find((each) => each === this.facts['shelf']) ?? 'any';
    const odd = feet === undefined ? [] : questionFeet(feet, shelf);
    // Length first: nothing else is asked for as often. How it was taken stands below it, before the rest.
    const rest = FOOT_MEASURES.filter((measure) => measure !== 'length');
    return html`${this.measures(['length'], odd)}
      <p class="soft">${words.say('measure.feet.one')}</p>
      <div class="rows">
        ${this.how('posture')}${this.how('sock')}${this.how('time')}
      </div>
      ${this.measures(rest, odd)}`;
  }

  private measures(shown: readonly FootMeasure[], odd: readonly Finding[]) {
    const { words } = this;
    return html`<div class="measures">
      <div class="measures-head" aria-hidden="true">
        <span></span><strong>${words.say('measure.left')}</strong><strong>${words.say('measure.right')}</strong>
      </div>
      ${shown.map((measure) => this.row(measure, odd))}
    </div>`;
  }

  private how(key: keyof typeof CHOICES) {
    const { words, observation } = this;
    const name = words.say(`measure.feet.${key}`);
    const choices = CHOICES[key].map((id) => ({
      id,
      label: id === '' ? words.say('measure.feet.time-none') : words.say(`observation.${key}.${id}`),
    }));
    const chosen = (observation.feet ?? USUAL)[key as 'posture'] ?? '';
    return choiceRow(`feet-${key}`, name, choices, chosen, (id) =>
      this.put(withFeet(observation, key, (id || undefined) as undefined), name),
    );
  }

  private row(measure: FootMeasure, odd: readonly Finding[]) {
    const { words } = this;
    const across = measure === 'length' ? odd.filter(({ at }) => at === undefined) : [];
    return html`<section class="measure" data-measure=${measure}>
        <div>
          <h3>${words.say(`observation.measure.${measure}`)}</h3>
          <p class="soft">${words.say(`observation.measure-how.${measure}`)}</p>
        </div>
        ${this.cell('left', measure, odd)}${this.cell('right', measure, odd)}
      </section>
      ${across.map((finding) => this.across(finding))}`;
  }

  private cell(side: Side, measure: FootMeasure, odd: readonly Finding[]) {
    const { words, observation, unit } = this;
    const [from, to] = MEASURE_RANGES[measure];
    const label = `${words.say(`measure.${side}`)} · ${words.say(`observation.measure.${measure}`)}`;
    return html`<div class="measure-cell">
      <lw-drawing set="feet" name=${`${measure}-${side}`}></lw-drawing>
      <lw-measure-field
        .words=${words}
        name=${`${measure}-${side}`}
        label=${label}
        quiet
        .expected=${{ unit, from, to }}
        .value=${observation.feet?.[side]?.[measure]}
        .findings=${odd.filter(({ at, column }) => at === side && column === measure)}
        @measured=${(event: CustomEvent<number | undefined>) =>
          this.put(withFoot(this.observation, side, measure, event.detail), label)}
      ></lw-measure-field>
    </div>`;
  }

  /** What is odd about the two feet together, or about their shelf. Feet far apart can be confirmed. */
  private across(finding: Finding) {
    const { words, observation } = this;
    const name = words.say('measure.feet.checked');
    return html`<div class="said" data-code=${finding.code} role="status">
      <p>${findingText(finding, words)}</p>
      ${
        finding.code === 'feet-far-apart'
          ? html`<label class="choice plain"
              ><input
                type="checkbox"
                name="feet-checked"
                .checked=${observation.feet?.checked === true}
                @change=${(event: Event) =>
                  this.put(
                    withFeet(observation, 'checked', (event.target as HTMLInputElement).checked || undefined),
                    name,
                  )}
              /><span>${name}</span></label
            >`
          : nothing
      }
    </div>`;
  }
}
