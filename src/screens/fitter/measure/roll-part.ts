import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type Observation, ROLL_SEEN, type Roll } from '../../../observation/observation.ts';
import { heldBecause } from '../../../profile/movement-gate.ts';
import type { Facts } from '../../../profile/profile.ts';
import type { Words } from '../../../words/words.ts';
import { LightElement } from '../../parts/light-element.ts';
import type { Side } from './changed.ts';
import { choiceRow } from './choice-row.ts';

/** Seconds of one look. Longer looks do not agree better (common practice). */
const LOOK = 20;
const NOTHING_SEEN: Roll = { left: 'not-told', right: 'not-told', by: '', during: 'walk' };

/** How the feet roll while moving: one short look, told foot by foot, and what it can and cannot tell. Skipping costs nothing. */
@customElement('lw-measure-roll')
export class MeasureRoll extends LightElement {
  @property({ attribute: false }) observation!: Observation;
  @property({ attribute: false }) facts!: Facts;
  @property({ attribute: false }) words!: Words;
  /** Who is at the bench, where the shift says so. */
  @property() fitter = '';
  @property({ attribute: false }) put!: (observation: Observation, what: string) => void;

  /** A look nobody has put a name to counts for nothing yet. */
  @state() private draft: Roll | undefined;
  @state() private left = 0;
  private timer: number | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.stop();
  }

  private get roll(): Roll {
    return this.draft ?? this.observation.roll ?? { ...NOTHING_SEEN, by: this.fitter };
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('observation') && this.observation.roll !== undefined) this.draft = undefined;
  }

  private change(change: Partial<Roll>): void {
    const roll = { ...this.roll, ...change };
    if (roll.by.trim() === '') this.draft = roll;
    else {
      this.draft = undefined;
      this.put({ ...this.observation, roll }, this.words.say('measure.part.roll'));
    }
  }

  private leaveOut(): void {
    this.stop();
    this.draft = undefined;
    const { roll, ...rest } = this.observation;
    if (roll !== undefined) this.put(rest, this.words.say('measure.part.roll'));
  }

  private look(): void {
    this.stop();
    this.left = LOOK;
    this.timer = window.setInterval(() => {
      this.left -= 1;
      if (this.left <= 0) this.stop();
    }, 1000);
  }

  private stop(): void {
    window.clearInterval(this.timer);
    this.timer = undefined;
    this.left = 0;
  }

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`measure.roll.${key}`, data);
  }

  protected override render() {
    const { roll } = this;
    const held = heldBecause(this.facts).length > 0;
    const begun = this.draft !== undefined || this.observation.roll !== undefined;
    return html`<div class="plain-statement">
        <p>${this.say('can')}</p>
        <p>${this.say('cannot')}</p>
        <p>${this.say('skip')}</p>
      </div>
      ${held ? html`<p class="said" data-held>${this.say('held')}</p>` : nothing}
      <div class="foot">
        <button type="button" class="button" @click=${() => (this.timer === undefined ? this.look() : this.stop())}>
          ${this.left > 0 ? this.say('seconds', { count: this.left }) : this.say('look')}
        </button>
      </div>
      <div class="rows">
        ${choiceRow(
          'roll-during',
          this.say('during'),
          (held ? (['walk'] as const) : (['walk', 'own-movement'] as const)).map((id) => ({
            id,
            label: this.say(`during-${id}`),
          })),
          roll.during,
          (during) => this.change({ during: during as Roll['during'] }),
        )}
        ${(['left', 'right'] as const).map((side) => this.foot(side, roll))}
      </div>
      <label class="field by"
        ><span>${this.say('by')}</span
        ><input
          type="text"
          name="roll-by"
          autocomplete="off"
          maxlength="60"
          .value=${roll.by}
          @change=${(event: Event) => this.named((event.target as HTMLInputElement).value.trim())}
      /></label>
      ${begun && roll.by.trim() === '' ? html`<p class="said" role="status">${this.say('by-first')}</p>` : nothing}
      ${
        begun
          ? html`<div class="foot">
              <button type="button" class="button" @click=${this.leaveOut}>${this.say('leave-out')}</button>
            </div>`
          : nothing
      }`;
  }

  /** A name alone is no look. */
  private named(by: string): void {
    if (this.draft === undefined && this.observation.roll === undefined) this.fitter = by;
    else this.change({ by });
  }

  private foot(side: Side, roll: Roll) {
    const choices = ROLL_SEEN.map((id) => ({ id, label: this.say(`seen-${id}`) }));
    return choiceRow(`roll-${side}`, this.words.say(`measure.${side}`), choices, roll[side], (seen) =>
      this.change({ [side]: seen as Roll[Side] }),
    );
  }
}
