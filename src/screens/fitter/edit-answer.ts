import { html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Answer, Answers } from '../../flow/answers.ts';
import type { Question } from '../../flow/format.ts';
import type { Tables } from '../../flow/options.ts';
import type { Words } from '../../words/words.ts';
import '../customer/question-screen.ts';
import { answerText } from '../../card/text/answer-text.ts';
import { LightElement } from '../parts/light-element.ts';
import { offeredWithLabels } from '../parts/option-labels.ts';
import './reason-form.ts';
import { ASKED_NOW, ONE_TAP_REASONS } from './reasons.ts';

export interface Edited {
  readonly value: Answer;
  readonly reason: string;
}

/** One answer changed in its place, with the customer's own question; then why, in one tap or in words. */
@customElement('lw-edit-answer')
export class EditAnswer extends LightElement {
  @property({ attribute: false }) question!: Question;
  @property({ attribute: false }) answer: Answer | undefined;
  /** What the other answers come to, for the options offered. */
  @property({ attribute: false }) inPlay: Answers = {};
  @property({ attribute: false }) tables!: Tables;
  @property({ attribute: false }) words!: Words;

  @state() private given: Answer | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.updateComplete.then(() => this.querySelector<HTMLElement>('#ask')?.focus());
  }

  private finish(reason: string): void {
    const { given } = this;
    if (given === undefined) return;
    const detail: Edited = { value: given, reason };
    this.dispatchEvent(new CustomEvent('edited', { detail }));
  }

  private answered(event: CustomEvent<{ value: Answer }>): void {
    event.stopPropagation();
    this.given = event.detail.value;
    if (this.answer === undefined) this.finish(ASKED_NOW);
    void this.updateComplete.then(() => this.querySelector<HTMLElement>('#ask')?.focus());
  }

  private cancel(): void {
    this.dispatchEvent(new CustomEvent('kept'));
  }

  protected override render() {
    const { words, question } = this;
    // The question draws this button: a method left unbound would be called on the question.
    const keep = html`<button type="button" class="button" @click=${() => this.cancel()}>${words.say('bench.edit.keep')}</button>`;
    if (this.given !== undefined) return this.askWhy(this.given);
    return html`<lw-question
      class="in-place"
      data-question=${question.id}
      .question=${question}
      .answer=${this.answer}
      .offered=${offeredWithLabels(question, this.tables, this.inPlay, words)}
      .words=${words}
      .back=${keep}
      @answered=${this.answered}
    ></lw-question>`;
  }

  private askWhy(given: Answer) {
    const { words } = this;
    const say = (key: string) => words.say(`bench.edit.${key}`);
    return html`<div class="in-place why-changed">
      <h2 id="ask" tabindex="-1">${say('why')}</h2>
      <p>${say('new')} <strong>${answerText(this.question, given, words)}</strong></p>
      <lw-reason
        .reasons=${ONE_TAP_REASONS}
        .words=${words}
        @reason=${(event: CustomEvent<string>) => this.finish(event.detail)}
        @kept=${this.cancel}
      ></lw-reason>
    </div>`;
  }
}
