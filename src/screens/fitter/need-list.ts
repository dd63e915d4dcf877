import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Answers } from '../../flow/answers.ts';
import type { Flow } from '../../flow/format.ts';
import type { Source } from '../../flow/knowledge.ts';
import type { Why, WhyLink } from '../../profile/why.ts';
import { listText } from '../../units/list-text.ts';
import type { Words } from '../../words/words.ts';
import { LightElement } from '../parts/light-element.ts';
import { fromSaid } from './from-said.ts';
import { idealText, importanceText, isFelt, mustText, needName } from './why-text.ts';

/** Every need and must with its reasons, how well each is backed, and by whom. */
@customElement('lw-needs')
export class NeedList extends LightElement {
  @property({ attribute: false }) why: readonly Why[] = [];
  /** The answers that count, the fitter's changes among them. */
  @property({ attribute: false }) answers: Answers = {};
  @property({ attribute: false }) flow!: Flow;
  @property({ attribute: false }) words!: Words;
  @property() currency = '';

  protected override render() {
    const { words } = this;
    const musts = this.why.filter(({ kind }) => kind === 'must');
    const needs = this.why.filter(({ kind }) => kind === 'need');
    // What matters a little waits behind the rest, so that a fitter sees at once what this foot asks for.
    const matters = needs.filter(({ need }) => need && (isFelt(need) || need.raisedBy));
    const first = matters.length > 0 ? matters : needs;
    const little = needs.filter((need) => !first.includes(need));
    const conflicts = this.why.filter(({ kind }) => kind === 'conflict');
    return html`${
      musts.length > 0
        ? html`<section>
            <h2>${words.say('bench.needs.musts')}</h2>
            <ul class="needs">
              ${musts.map(
                (must) => html`<li>
                  <p class="need-head"><strong>${mustText({ attribute: must.about, value: must.value ?? true }, this.currency, words)}</strong></p>
                  ${this.reasons(must.links)}
                </li>`,
              )}
            </ul>
          </section>`
        : nothing
    }
      <section>
        <h2>${words.say('bench.needs.title')}</h2>
        ${needs.length === 0 ? html`<p class="soft">${words.say('bench.needs.none')}</p>` : nothing}
        <ul class="needs">
          ${first.map((need) => this.need(need))}
        </ul>
        ${
          little.length > 0
            ? html`<details class="little">
                <summary>${words.say('bench.needs.little', {
                  what: listText(
                    little.map(({ about }) => needName(about, words)),
                    words.language,
                  ),
                })}</summary>
                <ul class="needs">
                  ${little.map((need) => this.need(need))}
                </ul>
              </details>`
            : nothing
        }
        ${conflicts.map(
          ({ about }) =>
            html`<p class="said">${words.say('bench.needs.conflict', { what: needName(about, words) })}</p>`,
        )}
      </section>`;
  }

  private need({ about, need, links }: Why) {
    if (!need) return nothing;
    const { words } = this;
    const key = about as Parameters<typeof idealText>[0];
    return html`<li data-need=${about}>
      <p class="need-head">
        <strong>${needName(about, words)}</strong>
        <span>${idealText(key, need.ideal, this.currency, words)}</span>
        <span class="soft">${importanceText(need, words)}</span>
        ${need.raisedBy ? html`<span class="soft">${words.say('bench.needs.raised')}</span>` : nothing}
      </p>
      ${this.reasons(links)}
    </li>`;
  }

  /** What carries it first; what comes up in passing is folded away, unless there is nothing else. */
  private reasons(links: readonly WhyLink[]) {
    const { words } = this;
    const slight = links.every((link) => link.slight) ? [] : links.filter((link) => link.slight);
    const carrying = links.filter((link) => !slight.includes(link));
    return html`<details class="reasons-of">
      <summary>${words.say('bench.needs.reasons', { count: carrying.length })}</summary>
      <ul>
        ${carrying.map((link) => this.reason(link))}
      </ul>
      ${
        slight.length > 0
          ? html`<details class="source">
              <summary>${words.say('bench.needs.slight', { count: slight.length })}</summary>
              <ul>
                ${slight.map((link) => this.reason(link))}
              </ul>
            </details>`
          : nothing
      }
    </details>`;
  }

  private reason(link: WhyLink) {
    const { words } = this;
    const key = `rule.${link.rule}.why`;
    return html`<li>
      ${words.has(key) ? html`<p>${words.say(key)}</p>` : nothing}
      <p class="soft small">
        ${words.say('bench.needs.from', { from: fromSaid(link.from, this.answers, this.flow, words) })} ·
        ${words.say('bench.needs.grade', { grade: words.say(`card.grade.${link.grade}`) })}
        ${link.known === 'memory' ? html` · ${words.say('card.bench.memory')}` : nothing}
      </p>
      ${link.citation ? this.source(link.citation) : nothing}
    </li>`;
  }

  private source({ id, authors, year, title, where }: Source) {
    const { words } = this;
    const found = `source.${id}.found`;
    return html`<details class="source">
      <summary>${authors}${year === undefined ? '' : ` (${year})`}</summary>
      <p>${title}. <span class="soft">${where}.</span></p>
      ${words.has(found) ? html`<p>${words.say('bench.needs.found', { found: words.say(found) })}</p>` : nothing}
    </details>`;
  }
}
