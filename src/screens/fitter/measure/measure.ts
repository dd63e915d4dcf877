import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Observation } from '../../../observation/observation.ts';
import type { Facts } from '../../../profile/profile.ts';
import type { SizeAdvice } from '../../../sizing/advice.ts';
import { LENGTH_UNITS, type LengthUnit } from '../../../units/length.ts';
import type { Visit } from '../../../visit/visit.ts';
import type { Words } from '../../../words/words.ts';
import '../../look/measure.css';
import { LightElement } from '../../parts/light-element.ts';
import type { OwnSteps } from '../undo-button.ts';
import { choiceRow } from './choice-row.ts';
import './feet-part.ts';
import { HandedBack } from './handed-back.ts';
import { History } from './history.ts';
import './old-pair-part.ts';
import './roll-part.ts';
import './sheet-part.ts';
import './size-said.ts';

const PARTS = ['feet', 'old-pair', 'roll', 'sheet'] as const;
type Part = (typeof PARTS)[number];

/**
 * The measuring work: feet, the old pair, roll, and the sheet to print, with the size they lead to beside them. All of
 * it may be skipped. Fires `observation` with the whole observation at each accepted entry; each can be undone.
 */
@customElement('lw-measure')
export class MeasureScreen extends LightElement implements OwnSteps {
  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) facts!: Facts;
  /** As it stands; undefined while it is being worked out for the first time. */
  @property({ attribute: false }) advice: SizeAdvice | undefined;
  /** Who is at the bench, for the note of who looked. */
  @property() fitter = '';

  @state() private observation: Observation = {};
  @state() private now: Part = 'feet';
  @state() private unit: LengthUnit = 'mm';
  @state() private said = '';
  private readonly history = new History<Observation>();
  private readonly handedBack = new HandedBack<Observation>();

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('visit')) return;
    if (!this.handedBack.isNews(this.visit.observation)) return;
    // Changed elsewhere: it cannot be undone from here.
    this.history.clear();
    this.observation = this.visit.observation;
  }

  private readonly put = (observation: Observation, what: string): void => {
    this.history.keep(this.observation, what);
    this.said = '';
    this.tell(observation);
  };

  /** Tells whoever shows the Undo what it would take back. */
  protected override updated(): void {
    this.dispatchEvent(new CustomEvent<string>('last-step', { detail: this.history.last ?? '', bubbles: true }));
  }

  undo(): void {
    const what = this.history.last;
    const before = this.history.back();
    if (what === undefined || before === undefined) return;
    this.said = this.words.say('measure.undone', { what });
    this.tell(before);
  }

  private tell(observation: Observation): void {
    this.observation = observation;
    this.handedBack.tell(observation);
    this.dispatchEvent(new CustomEvent<Observation>('observation', { detail: observation }));
  }

  protected override render() {
    const { words } = this;
    return html`<div class="parts-bar">
      <nav class="parts" aria-label=${words.say('measure.parts')}>
        ${PARTS.map(
          (part) => html`<button
            type="button"
            class="button"
            data-part=${part}
            aria-current=${part === this.now ? 'true' : nothing}
            @click=${() => this.open(part)}
          >
            ${words.say(`measure.part.${part}`)}
          </button>`,
        )}
      </nav>
      <div class="bar">
        ${
          this.now === 'roll'
            ? nothing
            : choiceRow(
                'measure-unit',
                words.say('measure.typed-in'),
                LENGTH_UNITS.map((id) => ({ id, label: words.say(`measure.unit.${id}`) })),
                this.unit,
                (id) => {
                  this.unit = id as LengthUnit;
                },
              )
        }
        <p role="status" class="soft">${this.said}</p>
      </div>
      </div>
      <div class="sides">
        <section class="part" aria-labelledby="measure-part">
          <h2 id="measure-part" tabindex="-1">${words.say(`measure.part.${this.now}`)}</h2>
          ${this.shown()}
        </section>
        <aside aria-label=${words.say('measure.size.heading')}>
          <lw-size-said .advice=${this.advice} .words=${words}></lw-size-said>
        </aside>
      </div>`;
  }

  private open(part: Part): void {
    this.now = part;
    void this.updateComplete.then(() =>
      this.querySelector<HTMLElement>('#measure-part')?.focus({ preventScroll: true }),
    );
  }

  private shown() {
    const { observation, words, facts, unit, put } = this;
    switch (this.now) {
      case 'feet':
        return html`<lw-measure-feet
          .observation=${observation}
          .words=${words}
          .facts=${facts}
          .unit=${unit}
          .put=${put}
        ></lw-measure-feet>`;
      case 'old-pair':
        return html`<lw-measure-old-pair
          .observation=${observation}
          .words=${words}
          .unit=${unit}
          .put=${put}
        ></lw-measure-old-pair>`;
      case 'roll':
        return html`<lw-measure-roll
          .observation=${observation}
          .words=${words}
          .facts=${facts}
          fitter=${this.fitter}
          .put=${put}
        ></lw-measure-roll>`;
      case 'sheet':
        return html`<lw-measure-sheet
          .observation=${observation}
          .words=${words}
          .unit=${unit}
          .put=${put}
        ></lw-measure-sheet>`;
    }
  }
}
