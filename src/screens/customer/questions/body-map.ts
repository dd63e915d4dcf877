import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { BODY_WHEN, type BodyMap, type BodyMark, type BodyWhen } from '../../../flow/answers.ts';
import type { BodyMapQuestion } from '../../../flow/format.ts';
import { bringIntoView } from '../../parts/bring-into-view.ts';
import './body-figure.ts';
import { QuestionElement } from './question-element.ts';

/** Where it hurts or hurt: a drawing to tap and an equal list, then since when and whether a clinician has seen it. */
@customElement('lw-body-map')
export class BodyMapElement extends QuestionElement<BodyMapQuestion> {
  @state() private marks: Readonly<Record<string, Partial<BodyMark>>> = {};

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('question')) this.marks = typeof this.answer === 'object' ? { ...(this.answer as BodyMap) } : {};
  }

  private toggle(region: string): void {
    const { [region]: had, ...rest } = this.marks;
    this.marks = had ? rest : { ...this.marks, [region]: {} };
    if (!had) void this.updateComplete.then(() => bringIntoView(this.querySelector(`[data-row="seen-${region}"]`)));
  }

  private set(region: string, change: Partial<BodyMark>): void {
    this.marks = { ...this.marks, [region]: { ...this.marks[region], ...change } };
  }

  /** The first row that waits for an answer. */
  private get open(): string | undefined {
    const rows = this.question.regions.flatMap(({ id }) => {
      const mark = this.marks[id];
      return [mark && mark.when === undefined && `when-${id}`, mark && mark.seen === undefined && `seen-${id}`];
    });
    return rows.find((row) => typeof row === 'string');
  }

  /** Leads on, or to the row that is still open. */
  private goOn(): void {
    const { open } = this;
    if (open === undefined) {
      this.give(this.marks as BodyMap);
      return;
    }
    const row = this.querySelector(`[data-row="${open}"]`);
    row?.querySelector('input')?.focus({ preventScroll: true });
    row?.scrollIntoView({ block: 'center' });
  }

  protected override render() {
    const { regions } = this.question;
    const marked = regions.filter(({ id }) => this.marks[id]);
    const none = marked.length === 0;
    const { open } = this;
    return html`<div class="body-map">
        <lw-body-figure
          .regions=${regions}
          .marked=${marked.map(({ id }) => id)}
          .label=${(id: string) => this.say(`region.${id}`)}
          .viewLabel=${(view: string) => this.words.say(`screen.view.${view}`)}
          @region=${(event: CustomEvent<string>) => this.toggle(event.detail)}
        ></lw-body-figure>
        <fieldset>
          <legend class="visually-hidden">${this.say('ask')}</legend>
          <ul class="choices list regions">
            ${regions.map(
              ({ id }) => html`<li>
                <label class="choice plain"
                  ><input type="checkbox" name=${id} .checked=${id in this.marks} @change=${() => this.toggle(id)} /><span
                    >${this.say(`region.${id}`)}</span
                  ></label
                >
              </li>`,
            )}
          </ul>
        </fieldset>
      </div>
      <section aria-live="polite" class="rows marks">
        ${marked.map(({ id }) => this.detail(id, this.marks[id] ?? {}))}
      </section>
      ${this.foot(html`
        <button
          type="button"
          class="button main"
          aria-describedby=${open ? 'body-first' : nothing}
          @click=${this.goOn}
        >
          ${this.words.say(none ? 'screen.nothingHurts' : 'screen.continue')}
        </button>
        ${
          none
            ? html`<button type="button" class="button" @click=${() => this.give('skipped')}>
                ${this.words.say('screen.skipBody')}
              </button>`
            : nothing
        }
        ${open ? html`<p class="soft" id="body-first">${this.words.say('screen.bodyFirst')}</p>` : nothing}`)}`;
  }

  private detail(region: string, mark: Partial<BodyMark>) {
    const label = this.say(`region.${region}`);
    return html`<fieldset data-row="when-${region}" ?data-open=${this.open === `when-${region}`}>
        <legend>${this.words.say('screen.bodyWhen', { region: label })}</legend>
        <div class="segments">
          ${BODY_WHEN.map(
            (when: BodyWhen) => html`<label
              ><input type="radio" name=${`when-${region}`} value=${when} .checked=${mark.when === when} @change=${() => this.set(region, { when })} />${this.words.say(`screen.when.${when}`)}</label
            >`,
          )}
        </div>
      </fieldset>
      <fieldset data-row="seen-${region}" ?data-open=${this.open === `seen-${region}`}>
        <legend>${this.words.say('screen.bodySeen', { region: label })}</legend>
        <div class="segments">
          ${[true, false].map(
            (seen) => html`<label
              ><input type="radio" name=${`seen-${region}`} value=${String(seen)} .checked=${mark.seen === seen} @change=${() => this.set(region, { seen })} />${this.words.say(seen ? 'screen.yes' : 'screen.no')}</label
            >`,
          )}
        </div>
      </fieldset>`;
  }
}
