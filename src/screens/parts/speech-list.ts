import { html } from 'lit';
import type { Words } from '../../words/words.ts';
import { languageName } from './language-name.ts';

/** The languages in a list that opens: five buttons would crowd a tag, and a tablet opens it as large as a page. */
export const speechList = (words: Words, languages: readonly string[], choose: (language: string) => void) =>
  html`<select
    class="speech"
    aria-label=${words.say('screen.welcome.language')}
    @change=${(event: Event) => choose((event.target as HTMLSelectElement).value)}
  >
    ${languages.map(
      (language) => html`<option value=${language} lang=${language} .selected=${language === words.language}>
        ${languageName(language)}
      </option>`,
    )}
  </select>`;
