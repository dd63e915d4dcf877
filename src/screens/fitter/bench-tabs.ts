import { html, nothing } from 'lit';
import type { Words } from '../../words/words.ts';

/** The tabs on the rail: all tickets, each open one by its name, and the shop where the build has it. */
export function benchTabs(
  openIds: readonly string[],
  at: string,
  words: Words,
  go: (to: string) => void,
  shop: string | undefined,
) {
  const tab = (id: string, label: string) => html`<button
    type="button"
    class="tab"
    data-tab=${id}
    aria-current=${at === id ? 'page' : nothing}
    @click=${() => go(id)}
  >
    ${label}
  </button>`;
  return html`<nav class="tabs" aria-label=${words.say('bench.tabs')}>
    ${tab('tickets', words.say('bench.allTickets'))} ${openIds.map((id) => tab(id, id))}
    ${shop === undefined ? nothing : tab(shop, words.say('bench.shop'))}
  </nav>`;
}
