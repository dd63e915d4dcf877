import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type Count, GAP_TOPICS, type Gaps, type GapTopic, NO_GAPS } from '../../gaps/gaps.ts';
import { shownGaps, usualMinutes } from '../../gaps/shown.ts';
import { type OffsetSuggestion, type SizeTally, suggestOffset } from '../../sizing/suggest-offset.ts';
import type { Store } from '../../storage/store.ts';
import type { Words } from '../../words/words.ts';
import type { LineClient } from '../../worker/line-client.ts';
import { dayOf } from '../fitter/day.ts';
import { GAPS_TALLY, SIZES_TALLY } from '../fitter/tally.ts';
import { LightElement } from '../parts/light-element.ts';
import { saveFile } from '../parts/save-file.ts';
import { bar } from './bar.ts';
import { lackText } from './lack-text.ts';
import { lacksList } from './lacks-list.ts';
import { listStyle } from './list-style.ts';

interface Suggested extends OffsetSuggestion {
  readonly name: string;
}

/** What people asked for that the range does not hold, added up over closed visits: table, plot and list. */
@customElement('lw-shop-lacks')
export class LacksScreen extends LightElement {
  @property({ attribute: false }) store!: Store;
  @property({ attribute: false }) words!: Words;
  @property({ attribute: false }) line!: LineClient;
  @state() private gaps: Gaps | undefined;
  @state() private offsets: readonly Suggested[] = [];

  override connectedCallback(): void {
    super.connectedCallback();
    void this.look();
  }

  private async look(): Promise<void> {
    this.gaps = (await this.store.get<Gaps>('tallies', GAPS_TALLY).catch(() => undefined)) ?? NO_GAPS;
    const sizes = (await this.store.get<readonly SizeTally[]>('tallies', SIZES_TALLY).catch(() => undefined)) ?? [];
    const names = await this.line.shoeNames(sizes.map(({ shoe }) => shoe));
    this.offsets = sizes.flatMap((tally) => {
      const known = names[tally.shoe];
      const suggestion = known && suggestOffset(tally, known.sizeOffset);
      return suggestion ? [{ ...suggestion, name: known.name }] : [];
    });
  }

  private say(key: string, data?: Readonly<Record<string, string | number>>): string {
    return this.words.say(`shop.lacks.${key}`, data);
  }

  private save(gaps: Gaps): void {
    const list = new Blob([lacksList(gaps, this.words, listStyle(this.words))], { type: 'text/csv;charset=utf-8' });
    saveFile(list, `${this.words.say('shop.file.lacks')}-${dayOf(new Date())}.csv`);
  }

  protected override render() {
    const { gaps, words } = this;
    if (!gaps) return nothing;
    const rows = shownGaps(gaps);
    const minutes = usualMinutes(gaps);
    return html`<div class="head">
        <h1 id="ask" tabindex="-1">${words.say('lacks.title')}</h1>
        <p>
          <strong>${words.say('lacks.visits', { count: gaps.visits })}</strong>${
            minutes === undefined ? nothing : html`, ${words.say('lacks.minutes', { minutes })}`
          }
        </p>
        <p class="soft small">${this.say('lead')} ${words.say('lacks.health-note')}</p>
      </div>
      ${rows.length === 0 ? html`<p>${words.say('lacks.nothing')}</p>` : this.tables(rows)} ${this.suggestions()}
      <div class="foot">
        <button type="button" class="button" ?disabled=${gaps.visits === 0} @click=${() => this.save(gaps)}>${this.say('save')}</button>
      </div>`;
  }

  private tables(rows: readonly Count[]) {
    const most = Math.max(...rows.map(({ count }) => count));
    return html`<div class="lacks">
      ${GAP_TOPICS.filter((topic) => rows.some((row) => row.topic === topic)).map((topic) =>
        this.table(
          topic,
          rows.filter((row) => row.topic === topic),
          most,
        ),
      )}
    </div>`;
  }

  private table(topic: GapTopic, rows: readonly Count[], most: number) {
    return html`<table data-topic=${topic}>
      <caption>${this.words.say(`lacks.${topic}.title`)}</caption>
      <thead>
        <tr>
          <th scope="col">${this.say('what')}</th>
          <th scope="col" class="times">${this.say('times')}</th>
          <td aria-hidden="true"></td>
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          (row) => html`<tr>
            <th scope="row">${lackText(row, this.words)}</th>
            <td class="times">${this.words.number(row.count)}</td>
            <td class="plot" aria-hidden="true">${bar(row.count / most)}</td>
          </tr>`,
        )}
      </tbody>
    </table>`;
  }

  private suggestions() {
    if (this.offsets.length === 0) return nothing;
    return html`<section class="offsets">
      <h2>${this.say('offsets')}</h2>
      <p class="soft small">${this.say('offsetsLead')}</p>
      <ul>
        ${this.offsets.map(
          ({ name, runs, notes, of, offset }) => html`<li>
            <strong>${name}</strong> ${this.say(`runs-${runs}`, { notes, of, offset })}
          </li>`,
        )}
      </ul>
    </section>`;
  }
}
