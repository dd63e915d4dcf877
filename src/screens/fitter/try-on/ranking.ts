import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { afterTryOn } from '../../../shortlist/after-try-on.ts';
import type { TryOn } from '../../../visit/visit.ts';
import type { Words } from '../../../words/words.ts';
import { LightElement } from '../../parts/light-element.ts';
import type { PairToTry } from './pairs-to-try.ts';
import { moved, rankedOf } from './records.ts';

/** The customer's own order, which goes before paper and numbers: tap the pairs, best first; buttons move them. */
@customElement('lw-ranking')
export class Ranking extends LightElement {
  @property({ attribute: false }) pairs: readonly PairToTry[] = [];
  @property({ attribute: false }) tryOns: readonly TryOn[] = [];
  @property({ attribute: false }) words!: Words;

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`try-on.ranking.${key}`, data);
  }

  private order(order: readonly string[], focus?: string): void {
    this.dispatchEvent(new CustomEvent<readonly string[]>('order', { detail: order }));
    // The button that was pressed may have moved or gone: focus stays with the pair.
    if (focus) {
      void this.updateComplete.then(() =>
        this.querySelector<HTMLElement>(`[data-rank="${focus}"] button:not([disabled])`)?.focus(),
      );
    }
  }

  protected override render() {
    const { pairs, tryOns } = this;
    const nameOf = (shoe: string): string => pairs.find((pair) => pair.shoe.id === shoe)?.shoe.name ?? shoe;
    const ranked = rankedOf(tryOns).filter((shoe) => pairs.some((pair) => pair.shoe.id === shoe));
    const rest = pairs.filter(
      ({ shoe, boxes }) =>
        !ranked.includes(shoe.id) && (boxes.length > 0 || tryOns.some((each) => each.shoe === shoe.id)),
    );
    const { aboutTheSame } = afterTryOn(ranked, tryOns);
    return html`<h2>${this.say('title')}</h2>
      <p class="soft">${this.say('how')}</p>
      <ol class="ranked" aria-label=${this.say('title')}>
        ${ranked.map((shoe, at) => this.place(shoe, at, ranked))}
      </ol>
      ${rest.length > 0 && ranked.length > 0 ? html`<p>${this.say('next')}</p>` : nothing}
      <div class="to-rank">
        ${rest.map(
          ({ letter, shoe }) => html`<button
            type="button"
            class="button"
            data-shoe=${shoe.id}
            @click=${() => this.order([...ranked, shoe.id], shoe.id)}
          >
            <span class="letter">${letter}</span> ${shoe.name}
          </button>`,
        )}
      </div>
      <div role="status">
        ${aboutTheSame.map(
          ([one, other]) => html`<p class="same">
            ${this.words.say('after-try-on.about-the-same', { one: nameOf(one), other: nameOf(other) })}
          </p>`,
        )}
      </div>`;
  }

  private place(shoe: string, at: number, ranked: readonly string[]) {
    const pair = this.pairs.find((each) => each.shoe.id === shoe);
    const name = pair?.shoe.name ?? shoe;
    const move = (by: -1 | 1, key: string, ends: boolean) =>
      html`<button
        type="button"
        class="button step"
        aria-label=${this.say(key, { shoe: name })}
        ?disabled=${ends}
        @click=${() => this.order(moved(ranked, shoe, by), shoe)}
      >
        <svg viewBox="0 0 24 24" aria-hidden="true"><path d=${by < 0 ? 'M12 20V5M5 11l7-7 7 7' : 'M12 4v15M5 13l7 7 7-7'} /></svg>
      </button>`;
    return html`<li data-rank=${shoe}>
      <span class="rank">${at + 1}</span>
      <strong>${pair ? `${pair.letter} · ${name}` : name}</strong>
      ${move(-1, 'up', at === 0)}${move(1, 'down', at === ranked.length - 1)}
      <button
        type="button"
        class="button step"
        aria-label=${this.say('out', { shoe: name })}
        @click=${() => this.order(ranked.filter((each) => each !== shoe))}
      >
        <svg viewBox="0 0 24 24" aria-hidden="true"><path d="M5 5l14 14M19 5L5 19" /></svg>
      </button>
    </li>`;
  }
}
