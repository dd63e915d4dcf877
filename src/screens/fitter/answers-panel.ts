import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { answerText } from '../../card/text/answer-text.ts';
import { keptReason } from '../../card/text/kept-reason.ts';
import type { Answer } from '../../flow/answers.ts';
import type { Flow, Question } from '../../flow/format.ts';
import type { Tables } from '../../flow/options.ts';
import { questionsOf, routeOf } from '../../flow/route.ts';
import { questionOf } from '../../profile/from.ts';
import type { Why } from '../../profile/why.ts';
import { withOverrides } from '../../visit/effective.ts';
import type { Visit } from '../../visit/visit.ts';
import type { Words } from '../../words/words.ts';
import { LightElement } from '../parts/light-element.ts';
import { ChangeEvent } from './bench-event.ts';
import type { Edited } from './edit-answer.ts';
import './edit-answer.ts';
import { saysNothing } from './says-nothing.ts';
import { aboutText } from './why-text.ts';

/** Questions worth asking now that are shown at once. Our choice: what fits a glance. */
const WORTH_ASKING = 5;

/** Without these nothing can be fetched: they are asked before anything else. */
const ASK_FIRST: readonly string[] = ['shelf', 'activity', 'now-size'];
/** The answers told on top, line by line. */
const SUMMED: readonly (readonly string[])[] = [
  ['activity', 'second-activity', 'floors'],
  ['now-troubles', 'body', 'ankles', 'inside', 'conditions'],
  ['shelf', 'age-band', 'now-size', 'now-feel', 'budget'],
];
/** Answers to the signs that are no sign. */
const NO_SIGN: readonly string[] = ['none', 'rather-not-say', 'no-grown-up'];

/** The visit's answers by section, what each led to, and the questions still worth asking; each changed in its place. */
@customElement('lw-answers')
export class AnswersPanel extends LightElement {
  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) unknown: readonly string[] = [];
  @property({ attribute: false }) why: readonly Why[] = [];
  /** Room in front of this wearer's toes, millimetres, which some advice names. */
  @property({ attribute: false }) toeRoom!: readonly [number, number];
  @property({ attribute: false }) flow!: Flow;
  @property({ attribute: false }) tables!: Tables;
  @property({ attribute: false }) words!: Words;
  @property() currency = '';
  @property() initials = '';
  /** The answer being changed, and in which list. */
  @state() private editing: { readonly id: string; readonly list: 'worth' | 'section' } | undefined;

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`bench.answers.${key}`, data);
  }

  private edit(id: string, list: 'worth' | 'section'): void {
    this.editing = { id, list };
  }

  private kept(id: string): void {
    this.editing = undefined;
    void this.updateComplete.then(() => this.querySelector<HTMLElement>(`[data-edit="${id}"]`)?.focus());
  }

  private edited(id: string, { value, reason }: Edited): void {
    const by = this.initials;
    this.kept(id);
    this.dispatchEvent(
      new ChangeEvent(({ visit, ...rest }) => ({
        ...rest,
        visit: { ...visit, overrides: [...visit.overrides, { question: id, value, by, reason }] },
      })),
    );
  }

  private takeBack(id: string): void {
    this.dispatchEvent(
      new ChangeEvent(({ visit, ...rest }) => ({
        ...rest,
        visit: { ...visit, overrides: visit.overrides.filter(({ question }) => question !== id) },
      })),
    );
  }

  protected override render() {
    const route = routeOf(this.flow, withOverrides(this.visit));
    const first = ASK_FIRST.filter((id) => route.asked.includes(id) && route.answers[id] === undefined);
    const worth = [...new Set([...first, ...this.unknown])].slice(0, WORTH_ASKING);
    const silent = questionsOf(this.flow).filter(
      ({ id }) => route.asked.includes(id) && this.isSilent(id, route.answers),
    );
    return html`${this.summary(route.answers)}
    ${
      worth.length > 0
        ? html`<section class="worth">
            <h2>${this.say('worth')}</h2>
            <ol>
              ${worth.map((id) => this.worth(id, route.answers))}
            </ol>
          </section>`
        : nothing
    }
      ${this.flow.sections.map((section) => {
        const asked = section.questions.filter((each) => route.asked.includes(each.id) && !silent.includes(each));
        if (asked.length === 0) return nothing;
        return html`<section class="answers">
          <h2>${this.words.say(`section.${section.id}`)}</h2>
          <ul>
            ${asked.map((question) => this.row(question, route.answers))}
          </ul>
        </section>`;
      })}
      ${
        silent.length > 0
          ? html`<details class="answers">
              <summary>${this.say('more', { count: silent.length })}</summary>
              <ul>
                ${silent.map((question) => this.row(question, route.answers))}
              </ul>
            </details>`
          : nothing
      }`;
  }

  /** Whoever takes over reads these lines first: what for and where; what troubles; the feet and their size. */
  private summary(inPlay: Readonly<Record<string, Answer>>) {
    const lines = SUMMED.map((ids) =>
      ids.flatMap((id) => {
        const question = questionsOf(this.flow).find((each) => each.id === id);
        const answer = inPlay[id];
        return question === undefined || answer === undefined || saysNothing(answer)
          ? []
          : [answerText(question, answer, this.words)];
      }),
    ).filter((line) => line.length > 0);
    if (lines.length === 0) return nothing;
    return html`<section class="summed" aria-label=${this.say('summary')}>
      ${lines.map((line) => html`<p>${line.join(' · ')}</p>`)}
    </section>`;
  }

  /** An answer that tells nothing to go by, unless a fitter made it so. */
  private isSilent(id: string, inPlay: Readonly<Record<string, Answer>>): boolean {
    const answer = inPlay[id];
    return answer !== undefined && saysNothing(answer) && !this.visit.overrides.some(({ question }) => question === id);
  }

  private worth(id: string, inPlay: Readonly<Record<string, Answer>>) {
    const question = questionsOf(this.flow).find((each) => each.id === id);
    if (!question) return nothing;
    const open = this.editing?.id === id && this.editing.list === 'worth';
    const ask = this.words.say(`question.${id}.ask`);
    return html`<li>
      ${
        open
          ? this.editor(question, inPlay)
          : html`<button type="button" class="ask-now" data-edit=${id} @click=${() => this.edit(id, 'worth')}>${ask}</button>`
      }
    </li>`;
  }

  /** Whoever kept their health answers to themselves may well have given them. */
  private missing({ health }: Question): string {
    return this.say(health && this.visit.hold !== undefined ? 'private' : 'unanswered');
  }

  private row(question: Question, inPlay: Readonly<Record<string, Answer>>) {
    const { id } = question;
    if (this.editing?.id === id && this.editing.list === 'section')
      return html`<li>${this.editor(question, inPlay)}</li>`;
    const own = this.visit.answers[id];
    const answer = inPlay[id];
    const ask = this.words.say(`question.${id}.ask`);
    const overridden = this.visit.overrides.findLast((each) => each.question === id);
    const led = this.why.filter(({ links }) => links.some(({ from }) => questionOf(from) === id));
    const text = (given: Answer) => answerText(question, given, this.words);
    return html`<li class="answer" data-question=${id}>
      <p class="asked soft">${ask}</p>
      <div class="said-so">
        <p><strong>${answer === undefined ? this.missing(question) : text(answer)}</strong></p>
        ${
          overridden
            ? html`<p class="changed">
                ${this.say('changed', { by: overridden.by, reason: keptReason(overridden.reason, this.words) })}
                ${own === undefined ? nothing : html`<span class="own">${this.say('own', { answer: text(own) })}</span>`}
                <button type="button" class="link" @click=${() => this.takeBack(id)}>${this.say('takeBack')}</button>
              </p>`
            : nothing
        }
        ${overridden && this.stopStays(question, overridden.value) ? html`<p class="said stop-stays">${this.words.say('bench.clearance.never')}</p>` : nothing}
        ${
          led.length > 0
            ? html`<p class="led small">
                ${this.say('led')} ${[...new Set(led.map((each) => aboutText(each, this.toeRoom, this.currency, this.words)))].join(' · ')}
              </p>`
            : nothing
        }
      </div>
      <button
        type="button"
        class="button change"
        data-edit=${id}
        aria-label=${this.words.say('screen.review.changeWhat', { question: ask })}
        @click=${() => this.edit(id, 'section')}
      >
        ${this.say(answer === undefined ? 'answer' : 'change')}
      </button>
    </li>`;
  }

  /** A sign that the customer tapped still counts, whatever a fitter made of the answer. */
  private stopStays({ id, kind }: Question, now: Answer): boolean {
    const own = this.visit.answers[id];
    if (kind !== 'signs' || !Array.isArray(own)) return false;
    const signs = own.filter((each) => !NO_SIGN.includes(each));
    return signs.some((sign) => !(Array.isArray(now) && now.includes(sign)));
  }

  private editor(question: Question, inPlay: Readonly<Record<string, Answer>>) {
    return html`<lw-edit-answer
      .question=${question}
      .answer=${inPlay[question.id]}
      .inPlay=${inPlay}
      .tables=${this.tables}
      .words=${this.words}
      @edited=${(event: CustomEvent<Edited>) => this.edited(question.id, event.detail)}
      @kept=${() => this.kept(question.id)}
    ></lw-edit-answer>`;
  }
}
