import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { SomeOf } from '../../../flow/format.ts';
import type { Offered } from '../../parts/offered.ts';
import { QuestionElement } from './question-element.ts';

/** Tick as many as fit, then continue; one tick too many is not taken, and that is said. With nothing ticked, one tap says so. */
@customElement('lw-some-of')
export class SomeOfQuestion extends QuestionElement<SomeOf> {
  @state() private chosen: readonly string[] = [];
  /** The last tick was one too many. */
  @state() private full = false;

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('question')) return;
    this.full = false;
    const given = Array.isArray(this.answer) ? (this.answer as readonly string[]) : [];
    this.chosen = given.filter((id) => this.ticks.some((option) => option.id === id));
  }

  private get ticks(): readonly Offered[] {
    return this.offered.filter((option) => !option.alone);
  }

  private toggle({ id }: Offered, box: HTMLInputElement): void {
    const others = this.chosen.filter((each) => each !== id);
    this.full = box.checked && others.length >= (this.question.most ?? this.offered.length);
    if (this.full) box.checked = false;
    else this.chosen = box.checked ? [...others, id] : others;
  }

  /** In the question's own order, so that the order of taps changes nothing. */
  private get value(): readonly string[] {
    return this.ticks.map((option) => option.id).filter((id) => this.chosen.includes(id));
  }

  private picked(count: number, most: number): string {
    return this.full
      ? this.words.say('screen.chosenFull', { most })
      : this.words.say('screen.chosenOf', { count, most });
  }

  protected override render() {
    const { most } = this.question;
    return html`<fieldset>
        <legend class="visually-hidden">${this.say('ask')}</legend>
        <ul class="choices list">
          ${repeat(
            this.ticks,
            (option) => option.id,
            (option) => html`<li>
              <label class="choice">
                <input
                  type="checkbox"
                  name=${option.id}
                  .checked=${this.chosen.includes(option.id)}
                  @change=${(event: Event) => this.toggle(option, event.target as HTMLInputElement)}
                />
                <span>${option.label}</span>
              </label>
            </li>`,
          )}
        </ul>
      </fieldset>
      <p role="status" class="soft">
        ${most && this.value.length > 0 ? this.picked(this.value.length, most) : nothing}
      </p>
      ${this.foot(this.onward(this.value.length > 0 ? this.value : undefined), this.question.health)}`;
  }
}
