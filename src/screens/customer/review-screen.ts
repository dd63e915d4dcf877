import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { answerText } from '../../card/text/answer-text.ts';
import type { Answers } from '../../flow/answers.ts';
import type { Flow } from '../../flow/format.ts';
import type { Route } from '../../flow/route.ts';
import type { Words } from '../../words/words.ts';
import { LightElement } from '../parts/light-element.ts';

/** All answers that count, by section, each with a way to change it. */
@customElement('lw-review')
export class ReviewScreen extends LightElement {
  @property({ attribute: false }) flow!: Flow;
  @property({ attribute: false }) route!: Route;
  @property({ attribute: false }) words!: Words;
  /** The question somebody went to change, and whether they did. */
  @property({ attribute: false }) cameBack = '';
  @property({ attribute: false }) changed = false;

  protected override render() {
    const { words, route } = this;
    const answers: Answers = route.answers;
    return html`<div class="head">
        <h1 id="ask" tabindex="-1">${words.say('screen.review.title')}</h1>
        <p class="lead soft">${words.say('screen.review.lead')}</p>
      </div>
      <div class="review">
        ${this.flow.sections.map((section) => {
          const asked = section.questions.filter(({ id }) => route.asked.includes(id) && answers[id] !== undefined);
          if (asked.length === 0) return '';
          return html`<section>
            <h2>${words.say(`section.${section.id}`)}</h2>
            <dl>
              ${asked.map((question) => {
                const ask = words.say(`question.${question.id}.ask`);
                const answer = answers[question.id];
                const back = question.id === this.cameBack;
                return html`<div tabindex=${back ? -1 : nothing} ?data-came-back=${back}>
                  <dt>${ask}</dt>
                  <dd>${answer === undefined ? '' : answerText(question, answer, words)}${
                    back && this.changed
                      ? html` <span class="changed">${words.say('screen.review.changed')}</span>`
                      : nothing
                  }</dd>
                  <dd>
                    <button
                      type="button"
                      class="link"
                      aria-label=${words.say('screen.review.changeWhat', { question: ask })}
                      @click=${() => this.dispatchEvent(new CustomEvent('change-answer', { detail: question.id }))}
                    >
                      ${words.say('screen.review.change')}
                    </button>
                  </dd>
                </div>`;
              })}
            </dl>
          </section>`;
        })}
      </div>`;
  }
}
