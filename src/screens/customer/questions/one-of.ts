import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { OneOf, YesNo } from '../../../flow/format.ts';
import { foundBy } from '../../../words/found-by.ts';
import type { Offered } from '../../parts/offered.ts';
import '../../parts/drawing.ts';
import { QuestionElement } from './question-element.ts';

/** More choices than this are first told apart by group, with drawings, and can be searched by typing. Common practice. */
const ONE_SCREEN = 10;

/** Buttons that answer at once. Long tables show their groups first; a group opens its own buttons. */
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
    return html`${this.choices()}${this.foot()}`;
  }

  private choices() {
    if (!this.grouped) return this.list(this.offered);
    if (this.group) return this.inGroup(this.group);
    return html`${this.searchField()}${this.search.trim() ? this.found() : this.groups()}`;
  }

  private groups() {
    const groups = [...new Set(this.offered.flatMap((option) => option.group ?? []))];
    const single = this.offered.filter((option) => !option.group);
    const prefix = this.table === 'activities' ? 'activity-group' : 'shoe-kind-group';
    const chosen = this.offered.find((option) => option.id === this.answer)?.group;
    const drawn = this.table === 'activities';
    return html`<ul class=${drawn ? 'choices big' : 'choices list'} aria-labelledby=${this.headingId}>
      ${groups.map(
        (group) => html`<li>
          <button type="button" class="choice" aria-pressed=${String(chosen === group)} @click=${() => this.open(group)}>
            ${drawn ? html`<lw-drawing set="activities" name=${group}></lw-drawing>` : nothing}
            ${this.words.say(`${prefix}.${group}`)}
          </button>
        </li>`,
      )}
      ${single.map((option) => this.item(option))}
    </ul>`;
  }

  private open(group: string): void {
    this.group = group;
    void this.updateComplete.then(() =>
      this.querySelector<HTMLElement>('.choice')?.focus({ focusVisible: false } as FocusOptions),
    );
  }

  private inGroup(group: string) {
    return html`<div class="in-group">
        <button type="button" class="link" @click=${() => (this.group = undefined)}>
          ${this.words.say('screen.otherKinds')}
        </button>
      </div>
      ${this.list(this.offered.filter((option) => option.group === group || !option.group))}`;
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
    // What fits none of them stands under whatever was found: a word may find the wrong thing.
    const rest = this.offered.filter((option) => !option.group && !found.includes(option));
    return html`<p role="status" class="soft">
        ${found.length > 0 ? this.words.say('screen.found', { count: found.length }) : this.words.say('screen.foundNothing')}
      </p>
      ${this.list([...found, ...rest])}`;
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
