import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Flow, Place } from '../../flow/format.ts';
import type { Words } from '../../words/words.ts';
import { displayed, setDisplay } from '../parts/display.ts';
import { LightElement } from '../parts/light-element.ts';
import { speechList } from '../parts/speech-list.ts';
import { LANGUAGES } from '../parts/word-files.ts';

/** The tag's stub: ticket, the sections passed so far sewn in, and what holds on every page: text size, contrast, language. */
@customElement('lw-stub')
export class Stub extends LightElement {
  @property({ attribute: false }) flow!: Flow;
  @property({ attribute: false }) words!: Words;
  @property() at: Place = 'welcome';
  @property({ attribute: false }) ticket: { readonly word: string; readonly number: number } | undefined;
  @property({ type: Boolean }) demo = false;
  @property({ attribute: false }) languages: readonly string[] = LANGUAGES;
  @state() private asking = false;

  protected override render() {
    const { words } = this;
    const say = (key: string) => words.say(`screen.${key}`);
    return html`<aside class="stub">
      <span class="hole" aria-hidden="true"></span>
      ${
        this.ticket
          ? html`<p class="ticket"><span>${say('ticket')}</span><strong>${this.ticket.word} ${this.ticket.number}</strong></p>`
          : html`<p class="ticket"><strong>Lacewing</strong></p>`
      }
      ${this.demo ? html`<p class="demo-mark">${say('demo')}</p>` : nothing}
      ${this.at === 'welcome' ? nothing : this.sections()}
      <div class="stub-foot">${this.asking ? this.askStartOver() : this.controls()}</div>
    </aside>`;
  }

  private sections() {
    const { flow, words, at } = this;
    const current = flow.sections.findIndex(({ questions }) => questions.some(({ id }) => id === at));
    const here = current === -1 ? flow.sections.length : current;
    return html`<ol class="sections" aria-label=${words.say('screen.sections')}>
      ${flow.sections.map(
        ({ id }, index) => html`<li ?data-sewn=${index < here} aria-current=${index === here ? 'step' : nothing}>
          ${words.say(`screen.section.${id}`)}
        </li>`,
      )}
    </ol>`;
  }

  private controls() {
    const { words } = this;
    const { large, contrast } = displayed();
    const set = (display: Parameters<typeof setDisplay>[0]) => {
      setDisplay(display);
      this.requestUpdate();
    };
    return html`<button type="button" class="plain" @click=${() => set({ text: large ? 'normal' : 'large' })}>
        ${words.say(large ? 'screen.textSizeOff' : 'screen.textSize')}
      </button>
      <button type="button" class="plain" @click=${() => set({ contrast: contrast ? 'normal' : 'more' })}>
        ${words.say(contrast ? 'screen.contrastOff' : 'screen.contrast')}
      </button>
      ${
        this.at === 'welcome'
          ? nothing
          : html`${speechList(words, this.languages, (language) =>
              this.dispatchEvent(new CustomEvent('language', { detail: language })),
            )}
              <button type="button" class="plain" @click=${() => (this.asking = true)}>${words.say('screen.startOver')}</button>`
      }`;
  }

  private askStartOver() {
    const { words } = this;
    return html`<p role="status">${words.say('screen.startOverAsk')}</p>
      <button
        type="button"
        class="plain"
        @click=${() => {
          this.asking = false;
          this.dispatchEvent(new CustomEvent('start-over'));
        }}
      >
        ${words.say('screen.startOverYes')}
      </button>
      <button type="button" class="plain" @click=${() => (this.asking = false)}>${words.say('screen.keepGoing')}</button>`;
  }
}
