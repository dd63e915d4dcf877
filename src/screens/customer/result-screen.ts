import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { CardText, CautionsText, LineUpText, PairText } from '../../card/text/card-text.ts';
import type { Words } from '../../words/words.ts';
import { apart } from '../parts/apart.ts';
import { LightElement } from '../parts/light-element.ts';
import '../parts/strips.ts';

const STOPS = ['now', 'today', 'before-choosing'];

/** What the visit comes to, for the customer: pairs to try with boxes, reasons and misgivings, or one of the other outcomes. */
@customElement('lw-result')
export class ResultScreen extends LightElement {
  @property({ attribute: false }) text!: CardText;
  @property({ attribute: false }) words!: Words;

  protected override render() {
    const { text } = this;
    const stops = text.cautions.filter(({ level }) => STOPS.includes(level));
    return html`${stops[0]?.level === 'now' ? this.emergency(stops[0]) : this.head()}
      ${stops.map((level, at) => this.stop(level, at === 0 && level.level === 'now'))}
      ${text.sizeFirst ? this.size() : nothing}
      ${text.lineUps.map((lineUp) => this.lineUp(lineUp))}
      ${text.size?.differs ? html`<p class="soft">${text.size.differs}</p>` : nothing}
      ${text.strips.rows.length > 0 ? html`<lw-strips .strips=${text.strips}></lw-strips>` : nothing}
      ${
        text.advice.items.length > 0
          ? html`<section class="advice">
              <h2>${text.advice.heading}</h2>
              <ul>
                ${text.advice.items.map((item) => html`<li>${item}</li>`)}
              </ul>
            </section>`
          : nothing
      }
      ${!text.sizeFirst && (text.outcome === 'shortlist' || text.outcome === 'fitter-first') ? this.size() : nothing}
      ${text.cautions.filter(({ level }) => !STOPS.includes(level)).map((level) => this.mind(level))}
      <p class="soft small">${text.disclaimer}</p>`;
  }

  private head() {
    const { text } = this;
    return html`<div class="head">
      <h1 id="ask" tabindex="-1">${text.title}</h1>
      ${text.lead.map((line) => html`<p class="lead">${line}</p>`)}
      ${text.musts ? html`<p>${text.musts}</p>` : nothing}
      ${text.health.map((line) => html`<p class="soft">${line}</p>`)}
    </div>`;
  }

  /** Whom to call stands above all else, and the staff can call too. */
  private emergency({ heading }: CautionsText) {
    return html`<div class="head">
      <h1 id="ask" class="urgent" tabindex="-1">${heading}</h1>
      <p class="lead">${this.words.say('result.tellStaff')}</p>
    </div>`;
  }

  /** Whom to call is said above already, where that heads the page. */
  private stop({ heading, items }: CautionsText, headed: boolean) {
    return html`<section class="stop">
      <svg class="hand" viewBox="0 0 48 56" aria-hidden="true">
        <path
          d="M14 30V12a4 4 0 0 1 8 0v14V8a4 4 0 0 1 8 0v18V12a4 4 0 0 1 8 0v22c0 12-6 18-15 18S9 46 5 36c-2-5 4-8 7-4z"
        />
      </svg>
      <div>
        ${headed ? nothing : html`<h2>${heading}</h2>`}
        <ul>
          ${items.map(({ text }) => html`<li>${text}</li>`)}
        </ul>
      </div>
    </section>`;
  }

  private mind({ heading, items }: CautionsText) {
    return html`<section class="mind">
      <h2>${heading}</h2>
      <ul>
        ${items.map(({ text }) => html`<li>${text}</li>`)}
      </ul>
    </section>`;
  }

  private lineUp({ heading, sharedReasons, sharedMisgivings, pairs, notes, but }: LineUpText) {
    return html`<section class="line-up">
      ${heading ? html`<h2>${heading}</h2>` : nothing}
      ${
        sharedReasons || sharedMisgivings
          ? html`<ul class="reasons">
              ${sharedReasons ? this.tick(sharedReasons) : nothing}
              ${sharedMisgivings ? this.but(but, sharedMisgivings) : nothing}
            </ul>`
          : nothing
      }
      <ol class="pairs">
        ${pairs.map((pair) => this.pair(pair))}
      </ol>
      ${notes.map((note) => html`<p class="soft">${note}</p>`)}
    </section>`;
  }

  private pair(pair: PairText) {
    const boxes = this.text.fetch.boxes.filter(({ letter }) => letter === pair.letter);
    return html`<li class="pair">
      <h3><span class="letter">${pair.letter}</span> ${pair.name}</h3>
      <p class="soft">${pair.price ? html`<strong class="price">${pair.price}</strong> · ` : nothing}${pair.part}</p>
${
  boxes.length > 0
    ? html`<ul class="boxes">
        ${boxes.map(
          (box) => html`<li>
            <strong>${box.label}</strong><strong class="shelf">${box.shelf}</strong>
            ${box.others ? html`<span class="soft">${apart(box.others)}</span>` : nothing}
            ${box.next ? html`<span class="soft">${apart(box.next)}</span>` : nothing}
          </li>`,
        )}
      </ul>`
    : nothing
}
      <ul class="reasons">
        ${pair.reasons.map((reason) => this.tick(reason))}
        ${pair.misgivings.map((misgiving) => this.but(pair.but, misgiving))}
      </ul>
      ${pair.notes.map((note) => html`<p class="soft small">${note}</p>`)}
    </li>`;
  }

  private tick(reason: string) {
    return html`<li>
      <svg viewBox="0 0 20 16" aria-hidden="true"><path d="M2 8l6 6L18 2" /></svg><span>${reason}</span>
    </li>`;
  }

  private but(word: string, misgiving: string) {
    return html`<li><span class="but">${word}</span><span>${misgiving}</span></li>`;
  }

  private size() {
    const { size } = this.text;
    if (!size) return nothing;
    return html`<section class="size">
      <h2>${size.heading}</h2>
      <dl>
        ${size.rows.map(({ name, value }) => html`<div><dt>${name}</dt><dd>${apart(value)}</dd></div>`)}
      </dl>
      ${size.notes.map((note) => html`<p class="soft">${note}</p>`)}
    </section>`;
  }
}
