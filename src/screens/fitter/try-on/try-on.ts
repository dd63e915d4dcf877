import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import { labelSystem } from '../../../card/label-system.ts';
import type { Shop } from '../../../card/shop.ts';
import type { Line } from '../../../pipeline.ts';
import type { Entry } from '../../../shortlist/shortlist.ts';
import type { Box } from '../../../stock/shoe.ts';
import type { TryOn, Visit } from '../../../visit/visit.ts';
import type { Words } from '../../../words/words.ts';
import '../../look/measure.css';
import '../../look/try-on.css';
import { LightElement } from '../../parts/light-element.ts';
import { feelLittle } from '../cleared.ts';
import { HandedBack } from '../measure/handed-back.ts';
import { History } from '../measure/history.ts';
import { measureFirst } from '../measure-first.ts';
import type { OwnSteps } from '../undo-button.ts';
import './pair-record.ts';
import { type PairToTry, pairsToTry } from './pairs-to-try.ts';
import './ranking.ts';
import { recordOf, withOrder, withRecord } from './records.ts';
import { tasksOfActivities, tasksToTry } from './tasks-to-try.ts';

/** The activities' tasks: loaded with this screen, since the rest of what is known stays in the worker. */
const loadActivities = () => import('../../../../flows/fitting/activities.json').then((file) => file.default);

/**
 * The try-on: each pair's record, what to try in it, and the customer's own order. Fires `try-ons` with every record
 * at each tap; each can be undone.
 */
@customElement('lw-try-on')
export class TryOnScreen extends LightElement implements OwnSteps {
  /** Shoe ids in the order of their letters. */
  @property({ attribute: false }) letters: readonly string[] = [];
  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) line!: Line;
  /** Pairs pulled in by hand. */
  @property({ attribute: false }) entries: readonly Entry[] = [];
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) shop!: Shop;
  /** All boxes of a model on hand, for the next size; without it only the boxes to fetch are known. */
  @property({ attribute: false }) boxesOf: ((shoe: string) => Promise<readonly Box[]>) | undefined;

  @state() private tryOns: readonly TryOn[] = [];
  @state() private shoe = '';
  @state() private uneven = false;
  @state() private tasks: readonly string[] | undefined;
  @state() private stocked: Readonly<Record<string, readonly Box[]>> = {};
  @state() private said = '';
  private readonly history = new History<readonly TryOn[]>();
  private readonly handedBack = new HandedBack<readonly TryOn[]>();

  private get pairs(): readonly PairToTry[] {
    return pairsToTry(this.line, this.entries, this.letters);
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('visit') && this.handedBack.isNews(this.visit.tryOns)) {
      // Changed elsewhere: it cannot be undone from here.
      this.history.clear();
      this.tryOns = this.visit.tryOns;
    }
    if (changed.has('line')) {
      this.stocked = {};
      void loadActivities().then((activities) => {
        this.tasks = tasksOfActivities(activities, this.line.profile.facts);
      });
    }
    const { pairs } = this;
    if (!pairs.some(({ shoe }) => shoe.id === this.shoe)) this.shoe = pairs[0]?.shoe.id ?? '';
    if (changed.has('line') || changed.has('shoe')) void this.lookUp(this.shoe);
  }

  private async lookUp(shoe: string): Promise<void> {
    if (shoe === '' || this.boxesOf === undefined || this.stocked[shoe]) return;
    const boxes = await this.boxesOf(shoe);
    this.stocked = { ...this.stocked, [shoe]: boxes };
  }

  private readonly put = (tryOns: readonly TryOn[], what: string): void => {
    this.history.keep(this.tryOns, what);
    this.said = '';
    this.tell(tryOns);
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

  private tell(tryOns: readonly TryOn[]): void {
    this.tryOns = tryOns;
    this.handedBack.tell(tryOns);
    this.dispatchEvent(new CustomEvent<readonly TryOn[]>('try-ons', { detail: tryOns }));
  }

  /** A pair that is ranked was tried: in the box to fetch, unless something else was noted. */
  private rank(order: readonly string[]): void {
    const begun = order.reduce((tryOns, shoe) => {
      const box = this.pairs.find((pair) => pair.shoe.id === shoe)?.boxes[0];
      return recordOf(tryOns, shoe) || !box ? tryOns : withRecord(tryOns, shoe, box.id);
    }, this.tryOns);
    this.put(withOrder(begun, order), this.words.say('try-on.ranking.title'));
  }

  private open(shoe: string): void {
    this.shoe = shoe;
    void this.updateComplete.then(() =>
      this.querySelector<HTMLElement>('#try-on-pair')?.focus({ preventScroll: true }),
    );
  }

  protected override render() {
    const { words, pairs } = this;
    const pair = pairs.find(({ shoe }) => shoe.id === this.shoe);
    if (pair === undefined) return html`<p>${words.say('try-on.no-pairs')}</p>`;
    return html`${measureFirst(this.line.profile, words, () => this.dispatchEvent(new CustomEvent('measure')))}
      ${feelLittle(this.line.profile) ? html`<p class="said feel-little"><strong>${words.say('try-on.feel-little')}</strong></p>` : nothing}
      <div class="parts-bar pairs-bar"><nav class="parts" aria-label=${words.say('try-on.pairs')}>${pairs.map((each) => this.tab(each))}</nav>
        <p role="status" class="soft">${this.said}</p>
      </div>
      <div class="sides">
        <section aria-labelledby="try-on-pair">
          ${
            this.tasks === undefined
              ? nothing
              : keyed(
                  pair.shoe.id,
                  html`<lw-pair-record
                  .pair=${pair}
                  .tryOns=${this.tryOns}
                  .stocked=${this.stocked[pair.shoe.id] ?? []}
                  .tasks=${tasksToTry(this.tasks, this.shop.kit, this.line.profile.facts, this.uneven)}
                  .uneven=${this.uneven}
                  .first=${labelSystem(this.visit)}
                  .words=${words}
                  .put=${this.put}
                  @uneven=${(event: CustomEvent<boolean>) => {
                    this.uneven = event.detail;
                  }}
                ></lw-pair-record>`,
                )
          }
        </section>
        <aside aria-label=${words.say('try-on.ranking.title')}>
          <lw-ranking
            .pairs=${pairs}
            .tryOns=${this.tryOns}
            .words=${words}
            @order=${(event: CustomEvent<readonly string[]>) => this.rank(event.detail)}
          ></lw-ranking>
        </aside>
      </div>`;
  }

  private tab({ letter, shoe }: PairToTry) {
    const tried = recordOf(this.tryOns, shoe.id) !== undefined;
    return html`<button
      type="button"
      class="button"
      data-pair=${shoe.id}
      aria-current=${shoe.id === this.shoe ? 'true' : nothing}
      @click=${() => this.open(shoe.id)}
    >
      <span>${letter} · ${shoe.name}${tried ? html`<span class="tried">${this.words.say('try-on.tried')}</span>` : nothing}</span>
    </button>`;
  }
}
