import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { SHARES } from '../../../flow/answers.ts';
import type { SharesQuestion } from '../../../flow/format.ts';
import type { Offered } from '../../parts/offered.ts';
import '../../parts/drawing.ts';
import { QuestionElement } from './question-element.ts';

/**
 * Tick places (or movements); where more than one is ticked, the next page of the question asks of each how often:
 * mostly, some, now and then. Rows under the ticks pushed one another below the window.
 */
@customElement('lw-shares')
export class SharesQuestionElement extends QuestionElement<SharesQuestion> {
  @state() private shares: Readonly<Record<string, string>> = {};
  /** Whether the rows are asked now. */
  @state() private weighing = false;

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('question')) return;
    const { answer } = this;
    const given =
      typeof answer === 'object' && !Array.isArray(answer) ? (answer as Readonly<Record<string, string>>) : {};
    this.weighing = false;
    this.shares = Object.fromEntries(this.ticks.flatMap(({ id }) => (given[id] ? [[id, given[id]]] : [])));
  }

  private get ticks(): readonly Offered[] {
    return this.offered.filter((option) => !option.alone);
  }

  private toggle(option: Offered, on: boolean): void {
    const kept = Object.entries(this.shares).filter(([id]) => id !== option.id);
    const first = !kept.some(([, share]) => share === 'mostly');
    this.shares = Object.fromEntries(on ? [...kept, [option.id, first ? 'mostly' : 'some']] : kept);
  }

  private get drawn(): boolean {
    return 'table' in this.question.options && this.question.options.table === 'floors';
  }

  private get chosen(): readonly Offered[] {
    return this.ticks.filter((option) => this.shares[option.id]);
  }

  /** One floor alone is what is mostly underfoot; one movement alone may still be rare. */
  private get weighs(): boolean {
    return this.chosen.length > (this.drawn ? 1 : 0);
  }

  private weigh(weighing: boolean): void {
    this.weighing = weighing;
    this.toFirstStop(weighing ? '.rows input:checked' : '.choice input');
  }

  protected override render() {
    return this.weighing ? this.rows() : this.tiles();
  }

  private tiles() {
    return html`<fieldset>
        <legend class="visually-hidden">${this.say('ask')}</legend>
        <ul class=${this.drawn ? 'choices tiles' : 'choices list'}>
          ${repeat(
            this.ticks,
            (option) => option.id,
            (option) => html`<li>
              <label class="choice">
                ${this.drawn ? html`<lw-drawing set="floors" name=${option.id}></lw-drawing>` : nothing}
                <input
                  type="checkbox"
                  name=${option.id}
                  .checked=${option.id in this.shares}
                  @change=${(event: Event) => this.toggle(option, (event.target as HTMLInputElement).checked)}
                />
                <span>${option.label}</span>
              </label>
            </li>`,
          )}
        </ul>
      </fieldset>
      ${this.foot(this.weighs ? this.toRows() : this.finished())}`;
  }

  private toRows() {
    return html`<button type="button" class="button main" @click=${() => this.weigh(true)}>
      ${this.words.say('screen.continue')}
    </button>`;
  }

  private finished() {
    return this.onward(this.chosen.length > 0 ? this.inOrder() : undefined, { alone: (id) => ({ [id]: 'mostly' }) });
  }

  private rows() {
    return html`<h2 class="inner">${this.words.say('screen.howOften')}</h2>
      <div class="rows">${this.chosen.map((option) => this.row(option))}</div>
      ${this.foot(this.finished(), false, () => this.weigh(false))}`;
  }

  private inOrder(): Readonly<Record<string, string>> {
    return Object.fromEntries(
      this.ticks.flatMap((option) => {
        const share = this.shares[option.id];
        return share ? [[option.id, share]] : [];
      }),
    );
  }

  private row(option: Offered) {
    return html`<fieldset data-row=${option.id}>
      <legend>${option.label}</legend>
      <div class="segments">
        ${SHARES.map(
          (share) => html`<label
            ><input
              type="radio"
              name=${`share-${option.id}`}
              value=${share}
              .checked=${this.shares[option.id] === share}
              @change=${() => (this.shares = { ...this.shares, [option.id]: share })}
            />${this.words.say(`screen.share.${share}`)}</label
          >`,
        )}
      </div>
    </fieldset>`;
  }
}
