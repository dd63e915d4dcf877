import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Words } from '../../words/words.ts';
import { languageName } from '../parts/language-name.ts';
import { LightElement } from '../parts/light-element.ts';
import { LANGUAGES } from '../parts/word-files.ts';

/** The first screen: what this is, what it does not do, the language, and one large button. */
@customElement('lw-welcome')
export class WelcomeScreen extends LightElement {
  @property({ attribute: false }) words!: Words;
  /** The ticket of answers that are still here from a moment ago, and may be somebody else's. */
  @property() resumable: string | undefined;
  @property() shopName = '';
  @property({ attribute: false }) languages: readonly string[] = LANGUAGES;
  /** What became of the visit before, or of what was kept of it. */
  @property() note = '';

  private tell(what: 'begin' | 'resume' | 'staff'): void {
    this.dispatchEvent(new CustomEvent(what));
  }

  protected override render() {
    const { words } = this;
    const say = (key: string) => words.say(`screen.welcome.${key}`);
    return html`<div class="welcome">
      ${this.note ? html`<p class="said" role="status">${words.say(this.note === 'idle' ? 'screen.idle.wiped' : `screen.note.${this.note}`)}</p>` : nothing}
      <div class="head">
        ${this.shopName ? html`<p class="soft">${this.shopName}</p>` : nothing}
        <h1 id="ask" tabindex="-1">${say('title')}</h1>
        <p class="lead">${say('lead')}</p>
        <p>${say('minutes')}</p>
        <p>${say('privacy')}</p>
      </div>
      <fieldset class="languages">
        <legend>${say('language')}</legend>
        <div class="units">
          ${this.languages.map(
            (language) => html`<label class="choice plain" lang=${language}
              ><input
                type="radio"
                name="language"
                value=${language}
                .checked=${words.language === language}
                @change=${() => this.dispatchEvent(new CustomEvent('language', { detail: language }))}
              /><span>${languageName(language)}</span></label
            >`,
          )}
        </div>
      </fieldset>
      ${
        this.resumable !== undefined
          ? html`<section class="head">
              <h2>${say('resumedTitle')}</h2>
              <p>${say('resumedLead')}</p>
              <p>${words.say('screen.welcome.resumedTicket', { ticket: this.resumable })}</p>
              <div class="foot">
                <button type="button" class="button main large" @click=${() => this.tell('resume')}>${say('resume')}</button>
                <button type="button" class="button large" @click=${() => this.tell('begin')}>${say('fresh')}</button>
              </div>
            </section>`
          : html`<div class="foot">
              <button type="button" class="button main large" @click=${() => this.tell('begin')}>${say('start')}</button>
            </div>`
      }
      <p class="soft small">${say('medical')}</p>
      <button type="button" class="link" data-act="staff" @click=${() => this.tell('staff')}>${say('shop')}</button>
    </div>`;
  }
}
