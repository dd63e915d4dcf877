import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { adviceText } from '../../card/text/advice-text.ts';
import type { Caution, Profile } from '../../profile/profile.ts';
import type { Clearance, Hold } from '../../visit/visit.ts';
import type { Words } from '../../words/words.ts';
import { LightElement } from '../parts/light-element.ts';
import { ChangeEvent } from './bench-event.ts';

const STOPS: readonly string[] = ['now', 'today', 'before-choosing'];

/** What comes before anything else on a ticket: cautions, hold, and a clinician's word where one can help. */
@customElement('lw-bench-cautions')
export class CautionsPanel extends LightElement {
  @property({ attribute: false }) profile!: Profile;
  @property({ attribute: false }) clearance: Clearance | undefined;
  @property({ attribute: false }) words!: Words;
  @property() emergencyNumber = '';
  @property() initials = '';
  /** What does not stop the line is folded away. */
  @property({ type: Boolean }) brief = false;
  @state() private entering = false;

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`bench.${key}`, data);
  }

  private clear(event: Event): void {
    event.preventDefault();
    const form = new FormData(event.target as HTMLFormElement);
    const clearance = { by: String(form.get('by') ?? '').trim(), reason: String(form.get('reason') ?? '').trim() };
    if (clearance.by === '' || clearance.reason === '') return;
    this.entering = false;
    this.dispatchEvent(new ChangeEvent(({ visit, ...rest }) => ({ ...rest, visit: { ...visit, clearance } })));
  }

  private takeBack(): void {
    this.dispatchEvent(
      new ChangeEvent(({ visit: { clearance: _clearance, ...visit }, ...rest }) => ({ ...rest, visit })),
    );
  }

  protected override render() {
    const { cautions, hold, advice } = this.profile;
    const stops = cautions.filter(({ level, cleared }) => STOPS.includes(level) && !cleared);
    const rest = cautions.filter((caution) => caution.level !== 'upkeep' && !stops.includes(caution));
    const own = this.brief ? [] : rest.filter(({ health, cleared }) => health || cleared);
    const tells = rest.filter((caution) => !own.includes(caution));
    return html`${
      stops.length > 0 || isStop(hold)
        ? html`<section class="stop">
            <svg class="hand" viewBox="0 0 48 56" aria-hidden="true">
              <path d="M14 30V12a4 4 0 0 1 8 0v14V8a4 4 0 0 1 8 0v18V12a4 4 0 0 1 8 0v22c0 12-6 18-15 18S9 46 5 36c-2-5 4-8 7-4z" />
            </svg>
            <div>
              <h2>${this.say(`hold.${hold}`)}</h2>
              <ul>
                ${stops.map((caution) => this.caution(caution))}
              </ul>
              ${this.clearing(hold)}
            </div>
          </section>`
        : nothing
    }
      ${this.cleared()}
      ${
        own.length > 0
          ? html`<section class="mind">
              <h2>${this.words.say('card.cautions.mind')}</h2>
              <ul>
                ${own.map((caution) => this.caution(caution))}
              </ul>
            </section>`
          : nothing
      }
      ${
        tells.length + advice.length > 0
          ? html`<details class="mind">
              <summary>${this.say('mind', { count: tells.length + advice.length })}</summary>
              <ul>
                ${tells.map((caution) => this.caution(caution))}
                ${advice.map(({ code }) => html`<li>${adviceText(code, this.profile.size.toeRoom, this.words)}</li>`)}
              </ul>
            </details>`
          : nothing
      }`;
  }

  private caution({ code, level, source, grade, cleared }: Caution) {
    const said = this.words.say(`card.grade.${grade}`);
    const backing =
      source === 'common-practice'
        ? said
        : this.words.say('card.bench.backing', { grade: said, source: `[${source}]` });
    return html`<li>
      ${STOPS.includes(level) ? html`<strong>${this.words.say(`card.cautions.${level}`, { number: this.emergencyNumber })}:</strong>` : nothing}
      ${this.words.say(`caution.${code}.text`)} <span class="soft small">${backing}</span>
      ${cleared ? html`<strong>${this.say('clearance.was')}</strong>` : nothing}
    </li>`;
  }

  private clearing(hold: Hold) {
    if (hold === 'now' || hold === 'today') return html`<p>${this.say('clearance.never')}</p>`;
    if (hold !== 'before-choosing') return nothing;
    if (!this.entering) {
      return html`<button type="button" class="button" @click=${() => (this.entering = true)}>${this.say('clearance.start')}</button>`;
    }
    return html`<form class="clearance" @submit=${this.clear}>
      <p>${this.say('clearance.lead')}</p>
      <label class="field"
        ><span>${this.say('clearance.by')}</span
        ><input type="text" name="by" required maxlength="60" autocomplete="off" .value=${this.initials}
      /></label>
      <label class="field"
        ><span>${this.say('clearance.reason')}</span
        ><input type="text" name="reason" required maxlength="200" autocomplete="off"
      /></label>
      <div class="line">
        <button type="submit" class="button main">${this.say('clearance.save')}</button>
        <button type="button" class="button" @click=${() => (this.entering = false)}>${this.say('edit.keep')}</button>
      </div>
    </form>`;
  }

  private cleared() {
    const { clearance } = this;
    if (!clearance) return nothing;
    return html`<p class="changed">
      ${this.say('clearance.given', { by: clearance.by, reason: clearance.reason })}
      <button type="button" class="link" @click=${this.takeBack}>${this.say('clearance.takeBack')}</button>
    </p>`;
  }
}

export const isStop = (hold: Hold): boolean => STOPS.includes(hold);
