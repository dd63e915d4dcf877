import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { OneOf, YesNo } from '../../../flow/format.ts';
import { foundBy } from '../../../words/found-by.ts';
import type { Offered } from '../../parts/offered.ts';
import '../../parts/drawing.ts';
import { QuestionElement } from './question-element.ts';

/** More choices than this are first told apart by group, with drawings, and can be searched by typing. Common practice. */
const ONE_SCREEN = 10;

/**
 * Buttons that answer at once. Long tables show their groups first; a group opens its own buttons. Beside the way back
 * stand the answers of no group ("nothing else"), and the way on with what was answered before.
 */
@customElement('lw-one-of')
export class OneOfQuestion extends QuestionElement<OneOf | YesNo> {
  @state() private group: string | undefined;
  @state() private search = '';

  private get table(): string {
    const { question } = this;
    return question.kind === 'one-of' && 'table' in question.options ? question.options.table : '';
  }

  private get grouped(): boolean {
    return this.offered.length > ONE_SCREEN && this.offered.some((option) => option.group);
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('question')) {
      this.group = undefined;
      this.search = '';
    }
  }

  protected override render() {
    const closing = this.group ? () => this.open(undefined) : undefined;
    return html`${this.choices()}${this.foot(this.grouped ? this.beside() : nothing, false, closing)}`;
  }

  private get single(): readonly Offered[] {
    return this.offered.filter((option) => !option.group);
  }

  private get kept(): Offered | undefined {
    return this.offered.find((option) => option.id === this.answer && option.group);
  }

  private beside() {
    const { kept } = this;
    return html`${
      kept
        ? html`<button type="button" class="button main" @click=${() => this.give(kept.id)}>
              ${this.words.say('screen.continue')}
            </button>
            <p class="soft">${kept.label}</p>`
        : nothing
    }${this.single.map(
      ({ id, label }) => html`<button
        type="button"
        class="button"
        aria-pressed=${String(this.answer === id)}
        @click=${() => this.give(id)}
      >
        ${label}
      </button>`,
    )}`;
  }

  private choices() {
    if (!this.grouped) return this.list(this.offered);
    if (this.group) return this.inGroup(this.group);
    return html`${this.searchField()}${this.search.trim() ? this.found() : this.groups()}`;
  }

  private nameOf(group: string): string {
    return this.words.say(`${this.table === 'activities' ? 'activity-group' : 'shoe-kind-group'}.${group}`);
  }

  private groups() {
    const groups = [...new Set(this.offered.flatMap((option) => option.group ?? []))];
    const chosen = this.kept?.group;
    const drawn = this.table === 'activities';
    return html`<ul class=${drawn ? 'choices big' : 'choices list'} aria-labelledby=${this.headingId}>
      ${groups.map(
        (group) => html`<li>
          <button type="button" class="choice" aria-pressed=${String(chosen === group)} @click=${() => this.open(group)}>
            ${drawn ? html`<lw-drawing set="activities" name=${group}></lw-drawing>` : nothing}
            ${this.nameOf(group)}
          </button>
        </li>`,
      )}
    </ul>`;
  }

  private open(group: string | undefined): void {
    this.group = group;
    this.toFirstStop('.choice');
  }

  private inGroup(group: string) {
    return html`<h2 class="inner">${this.nameOf(group)}</h2>
      ${this.list(this.offered.filter((option) => option.group === group))}`;
  }

  private searchField() {
    return html`<label class="field search"
      ><span class="visually-hidden">${this.words.say('screen.search')}</span
      ><input
        type="search"
        autocomplete="off"
        placeholder=${this.words.say('screen.search')}
        .value=${this.search}
        @input=${(event: Event) => (this.search = (event.target as HTMLInputElement).value)}
    /></label>`;
  }

  private found() {
    const ranked = this.offered.flatMap((option) => {
      const rank = foundBy(this.search, `${option.label} ${this.alsoCalled(option.id)}`);
      return rank === undefined ? [] : [{ option, rank }];
    });
    const found = ranked.sort((a, b) => a.rank - b.rank).map(({ option }) => option);
    return html`<p role="status" class="soft">
        ${found.length > 0 ? this.words.say('screen.found', { count: found.length }) : this.words.say('screen.foundNothing')}
      </p>
      ${found.length > 0 ? this.list(found) : nothing}`;
  }

  /** What else people type for it; known once the words that nobody needs at first are here. */
  private alsoCalled(id: string): string {
    const key = `search.${id}`;
    return this.table === 'activities' && this.words.has(key) ? this.words.say(key) : '';
  }

  private list(options: readonly Offered[]) {
    return html`<ul class="choices list" aria-labelledby=${this.headingId}>
      ${options.map((option) => this.item(option))}
    </ul>`;
  }

  private item(option: Offered) {
    return html`<li>
      <button type="button" class="choice" aria-pressed=${String(this.answer === option.id)} @click=${() => this.give(option.id)}>
        ${option.label}
      </button>
    </li>`;
  }
}
