import { html, nothing, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { Answer } from '../../../flow/answers.ts';
import type { Question } from '../../../flow/format.ts';
import type { Words } from '../../../words/words.ts';
import { LightElement } from '../../parts/light-element.ts';
import { AnsweredEvent, type Offered } from '../../parts/offered.ts';

/** What every question's element is given, and the one thing it gives back. */
export abstract class QuestionElement<Q extends Question = Question> extends LightElement {
  @property({ attribute: false }) question!: Q;
  @property({ attribute: false }) answer: Answer | undefined;
  @property({ attribute: false }) offered: readonly Offered[] = [];
  @property({ attribute: false }) words!: Words;
  /** The way back, set beside the way on. */
  @property({ attribute: false }) back: TemplateResult | typeof nothing = nothing;

  /**
   * The bottom row of every question: back, then what this kind needs to go on. Inside a question's second page, back is
   * `closing` that page. It stays in sight, but for a list to be `readToItsEnd`: there it stands under the last line, so
   * that nobody says "none of these" of lines they never saw.
   */
  protected foot(onward: unknown = nothing, readToItsEnd = false, closing?: () => void): TemplateResult {
    const back = closing
      ? html`<button type="button" class="button" data-act="back" @click=${closing}>${this.words.say('screen.back')}</button>`
      : this.back;
    return html`<div class=${readToItsEnd ? 'foot resting' : 'foot sticky'}>${back}${onward}</div>`;
  }

  /** After another page of the same question stands: whoever goes by keyboard starts at its first stop. */
  protected toFirstStop(selector: string): void {
    void this.updateComplete.then(() =>
      this.querySelector<HTMLElement>(selector)?.focus({ focusVisible: false } as FocusOptions),
    );
  }

  /**
   * The way on: with what was ticked, or else with one of the answers that stand alone ("none of these"), each a button
   * that answers at once. `alone` writes such an answer; nothing leads on while the page `waits` for another tap.
   */
  protected onward(
    ticked: Answer | undefined,
    { alone = (id: string): Answer => [id], waits = false } = {},
  ): TemplateResult {
    const button = (label: string, value: Answer, main: boolean, before?: boolean) => html`<button
      type="button"
      class=${main ? 'button main' : 'button'}
      aria-pressed=${before === undefined ? nothing : String(before)}
      ?disabled=${waits}
      @click=${() => this.give(value)}
    >
      ${label}
    </button>`;
    if (ticked !== undefined) return button(this.words.say('screen.continue'), ticked, true);
    const standing = this.offered.filter((option) => option.alone);
    if (standing.length > 0) {
      return html`${standing.map(({ id, label }, index) => button(label, alone(id), index === 0, this.answered(id)))}`;
    }
    return html`<button type="button" class="button main" disabled>${this.words.say('screen.continue')}</button>
      <p class="soft">${this.words.say('screen.pickFirst')}</p>`;
  }

  /** Whoever comes back finds what they tapped. */
  private answered(id: string): boolean {
    const { answer } = this;
    return Array.isArray(answer) ? answer.includes(id) : typeof answer === 'object' && id in answer;
  }

  protected give(value: Answer): void {
    this.dispatchEvent(new AnsweredEvent(value));
  }

  /** The words of this question: `option.none` → `question.<id>.option.none`. */
  protected say(key: string): string {
    return this.words.say(`question.${this.question.id}.${key}`);
  }

  /** `aria-labelledby` of the group: the page's heading. */
  protected get headingId(): string {
    return 'ask';
  }
}
