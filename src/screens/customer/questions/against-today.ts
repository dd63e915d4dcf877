import { html } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { AgainstToday } from '../../../flow/format.ts';
import { QuestionElement } from './question-element.ts';

/** Several properties on one screen, each against today's shoe. Rows left alone count as "don't mind". */
@customElement('lw-against-today')
export class AgainstTodayQuestion extends QuestionElement<AgainstToday> {
  @state() private chosen: Readonly<Record<string, string>> = {};

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('question')) return;
    const given = (this.answer ?? {}) as Readonly<Record<string, string>>;
    this.chosen = Object.fromEntries(this.question.properties.map(({ id }) => [id, given[id] ?? 'no-preference']));
  }

  protected override render() {
    return html`<div class="rows against">
        ${this.question.properties.map(
          ({ id, choices }) => html`<fieldset>
            <legend>${this.say(`property.${id}.name`)}</legend>
            <div class="segments">
              ${choices.map(
                (choice) => html`<label
                  ><input
                    type="radio"
                    name=${`against-${id}`}
                    value=${choice}
                    .checked=${this.chosen[id] === choice}
                    @change=${() => (this.chosen = { ...this.chosen, [id]: choice })}
                  />${this.say(`property.${id}.choice.${choice}`)}</label
                >`,
              )}
            </div>
          </fieldset>`,
        )}
      </div>
      ${this.foot(html`
        <button type="button" class="button main" @click=${() => this.give(this.chosen)}>
          ${this.words.say('screen.continue')}
        </button>`)}`;
  }
}
