import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { SignsQuestion } from '../../../flow/format.ts';
import type { Offered } from '../../parts/offered.ts';
import { QuestionElement } from './question-element.ts';

/**
 * Signs that matter before trying shoes. Each tap is confirmed on the page, since one of these changes what the
 * kiosk does next; taking it back is one tap.
 */
@customElement('lw-signs')
export class SignsQuestionElement extends QuestionElement<SignsQuestion> {
  @state() private chosen: readonly string[] = [];
  @state() private asked: string | undefined;

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('question')) return;
    const given = Array.isArray(this.answer) ? (this.answer as string[]) : [];
    const alone = new Set(this.offered.filter((option) => option.alone).map((option) => option.id));
    this.chosen = given.filter((id) => !alone.has(id));
    this.asked = undefined;
  }

  private ask(id: string): void {
    this.asked = id;
    void this.updateComplete.then(() => this.querySelector<HTMLElement>('.confirm')?.focus());
  }

  private untick(id: string): void {
    this.chosen = this.chosen.filter((each) => each !== id);
  }

  private settle(id: string, yes: boolean): void {
    this.asked = undefined;
    if (yes) this.chosen = [...this.chosen, id];
    void this.updateComplete.then(() => this.querySelector<HTMLElement>(`[data-sign="${id}"]`)?.focus());
  }

  protected override render() {
    const signs = this.offered.filter((option) => !option.alone);
    const ticked = signs.map(({ id }) => id).filter((id) => this.chosen.includes(id));
    return html`<ul class="choices list signs" aria-labelledby=${this.headingId}>
        ${repeat(
          signs,
          (option) => option.id,
          (option) => (this.asked === option.id ? this.confirm(option) : this.sign(option)),
        )}
      </ul>
      ${this.foot(this.onward(ticked.length > 0 ? ticked : undefined, { waits: this.asked !== undefined }), true)}`;
  }

  private sign(option: Offered) {
    const on = this.chosen.includes(option.id);
    return html`<li>
      <button
        type="button"
        class="choice plain"
        data-sign=${option.id}
        aria-pressed=${String(on)}
        @click=${() => (on ? this.untick(option.id) : this.ask(option.id))}
      >
        <span>${option.label}</span>
        ${on ? html`<span class="undo">${this.words.say('screen.undo')}</span>` : nothing}
      </button>
    </li>`;
  }

  private confirm(option: Offered) {
    return html`<li>
      <div class="confirm" role="group" aria-labelledby="confirm-${option.id}" tabindex="-1">
        <p id="confirm-${option.id}">${this.words.say('screen.signConfirm')} <strong>${option.label}</strong></p>
        <div class="foot">
          <button type="button" class="button main" @click=${() => this.settle(option.id, true)}>
            ${this.words.say('screen.yes')}
          </button>
          <button type="button" class="button" @click=${() => this.settle(option.id, false)}>
            ${this.words.say('screen.no')}
          </button>
        </div>
      </div>
    </li>`;
  }
}
