import { html } from 'lit';
import { COLUMNS, NEEDED, tellsSize } from '../../stock/columns.ts';
import type { Words } from '../../words/words.ts';

/** The columns of a stock list by how much a list needs them, each once, in the order of the table. */
export const COLUMN_GROUPS = {
  needed: COLUMNS.filter(({ header }) => NEEDED.includes(header)),
  size: COLUMNS.filter(tellsSize),
  model: COLUMNS.filter((column) => column.field.of === 'shoe' && !NEEDED.includes(column.header)),
  box: COLUMNS.filter((column) => column.field.of === 'box' && !NEEDED.includes(column.header) && !tellsSize(column)),
} as const;

/** What a list must hold and what it may, folded away beside the place to load it; and where the template comes from. */
export function columnsSaid(words: Words) {
  const { needed, size, model, box } = COLUMN_GROUPS;
  const names = (columns: typeof needed) =>
    html`<ul class="columns">${columns.map(({ header }) => html`<li><code dir="ltr">${header}</code></li>`)}</ul>`;
  const say = (key: string) => words.say(`shop.columns.${key}`);
  return html`<details class="columns-said">
    <summary>${say('title')}</summary>
    <p>${say('needed')}</p>
    ${names(needed)}
    <p>${say('size')}</p>
    ${names(size)}
    <p>${say('model')}</p>
    ${names(model)}
    <p>${say('box')}</p>
    ${names(box)}
    <p>
      ${words.say('shop.columns.template', { template: words.say('shop.stock.template'), place: words.say('shop.stock.files') })}
      ${words.say('shop.columns.measuring', { place: words.say('shop.part.measuring') })}
    </p>
  </details>`;
}
