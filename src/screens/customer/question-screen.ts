import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Answer } from '../../flow/answers.ts';
import type { Question } from '../../flow/format.ts';
import type { Words } from '../../words/words.ts';
import { LightElement } from '../parts/light-element.ts';
import type { Offered } from '../parts/offered.ts';
import './questions/one-of.ts';

/** Screens that nobody meets first: fetched once the welcome stands, defined before anybody can reach them. */
export const loadLaterScreens = (): Promise<unknown> => import('./later-screens.ts');

/** One question a page: its heading takes focus, why we ask stands under it, back is always there. */
@customElement('lw-question')
export class QuestionScreen extends LightElement {
  @property({ attribute: false }) question!: Question;
  @property({ attribute: false }) answer: Answer | undefined;
  /** Whether the question's note is meant for this customer. */
  @property({ attribute: false }) noted = false;
  /** The age told, where one was. */
  @property({ attribute: false }) ageBand: string | undefined;
  @property({ attribute: false }) offered: readonly Offered[] = [];
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) back!: TemplateResult;

  /** Why one question is asked is not read out again on the next. */
  protected override updated(changed: Map<string, unknown>): void {
    if (changed.has('question')) this.querySelector<HTMLDetailsElement>('.why')?.removeAttribute('open');
  }

  protected override render() {
    const { question, words } = this;
    const key = `question.${question.id}`;
    const keys = [...(words.has(`${key}.hint`) ? [`${key}.hint`] : []), ...(this.noted ? [`${key}.note`] : [])];
    const lead = keys.map((each) => words.say(each));
    return html`<div class="head">
        <h1 id="ask" tabindex="-1">${words.say(`${key}.ask`)}</h1>
        ${lead.length > 0 ? html`<p class="lead soft">${lead.join(' ')}</p>` : nothing}
        <details class="why">
          <summary>${words.say('screen.why')}</summary>
          <p>${words.say(`${key}.why`)}</p>
        </details>
      </div>
      ${this.kind()}`;
  }

  private kind(): TemplateResult {
    const { question, answer, offered, words, back, ageBand } = this;
    switch (question.kind) {
      case 'one-of':
      case 'yes-no':
        return html`<lw-one-of .question=${question} .answer=${answer} .offered=${offered} .words=${words} .back=${back}></lw-one-of>`;
      case 'some-of':
        return html`<lw-some-of .question=${question} .answer=${answer} .offered=${offered} .words=${words} .back=${back}></lw-some-of>`;
      case 'number':
        return html`<lw-number .question=${question} .answer=${answer} .ageBand=${ageBand} .offered=${offered} .words=${words} .back=${back}></lw-number>`;
      case 'shares':
        return html`<lw-shares .question=${question} .answer=${answer} .offered=${offered} .words=${words} .back=${back}></lw-shares>`;
      case 'against-today':
        return html`<lw-against-today .question=${question} .answer=${answer} .offered=${offered} .words=${words} .back=${back}></lw-against-today>`;
      case 'body-map':
        return html`<lw-body-map .question=${question} .answer=${answer} .offered=${offered} .words=${words} .back=${back}></lw-body-map>`;
      case 'signs':
        return html`<lw-signs .question=${question} .answer=${answer} .offered=${offered} .words=${words} .back=${back}></lw-signs>`;
    }
  }
}
