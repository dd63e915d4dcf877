import { TOOLS } from '../attributes/row.ts';
import type { Speaker } from '../attributes/speaker.ts';
import { ATTRIBUTES, type AttributeRow } from '../attributes/table.ts';
import { MEASURING_DRAWINGS } from './measuring-drawings.ts';

/** The page's parts, in order: with a tool, by hand against words, from the label. */
const PARTS = [
  { id: 'by-measure', holds: (row: AttributeRow) => row.kind === 'number' },
  { id: 'by-hand', holds: (row: AttributeRow) => row.kind === 'ordinal' },
  { id: 'by-label', holds: (row: AttributeRow) => row.kind === 'mark' || row.kind === 'list' },
];

/**
 * "How to measure a shoe without a laboratory", from the attribute table, as HTML to put into a page: an article with a
 * drawing, the steps and what to write for every property. No styles and no scripts.
 *
 * @example
 * measuringPage(words).startsWith('<article class="measuring"') // true
 */
export function measuringPage(words: Speaker): string {
  const parts = PARTS.map(
    ({ id, holds }) =>
      `<section><h2>${say(words, `stock.how-to-measure.${id}`)}</h2>${ATTRIBUTES.filter(holds)
        .map((row) => entry(words, row))
        .join('')}</section>`,
  );
  const tools = TOOLS.map((tool) => `<li>${say(words, `stock.tool.${tool}`)}</li>`).join('');
  return `<article class="measuring" lang="${escaped(words.language)}" dir="${words.direction}"><h1>${say(words, 'stock.how-to-measure.title')}</h1><p>${say(words, 'stock.how-to-measure.intro')}</p><h2>${say(words, 'stock.how-to-measure.tools')}</h2><ul>${tools}</ul>${parts.join('')}</article>`;
}

function entry(words: Speaker, row: AttributeRow): string {
  const drawing = row.kind === 'number' || row.kind === 'ordinal' ? (MEASURING_DRAWINGS[row.key] ?? '') : '';
  const column = escaped(words.say('stock.how-to-measure.column', { column: row.column }));
  return `<section id="measure-${row.key}"><h3>${say(words, `attribute.${row.key}.name`)}</h3>${drawing}<p>${say(words, `attribute.${row.key}.how`)}</p>${toWrite(words, row)}<p class="measuring-column">${column}</p></section>`;
}

/** What may stand in the column. */
function toWrite(words: Speaker, row: AttributeRow): string {
  if (row.kind === 'mark') return `<p>${say(words, 'stock.how-to-measure.yes-or-no')}</p>`;
  if (row.kind === 'list') {
    const items = row.items.map(
      ({ id }) => `<li><code>${id}</code> ${say(words, `attribute.${row.key}.item.${id}`)}</li>`,
    );
    return `<p>${say(words, 'stock.how-to-measure.accepts')}</p><ul>${items.join('')}</ul>`;
  }
  const [from, to] = row.range;
  if (!row.anchors) {
    return `<p>${escaped(words.say('stock.how-to-measure.range', { from, to }))}</p>`;
  }
  const anchors = row.anchors.map((id, at) => {
    const key = `attribute.${row.key}.anchor.${id}`;
    const meaning = words.has(key) ? `: ${say(words, key)}` : '';
    return `<dt>${words.number(from + at)}</dt><dd>${say(words, `attribute.${row.key}.step.${id}`)}${meaning}</dd>`;
  });
  return `<p>${say(words, 'stock.how-to-measure.words')}</p><dl>${anchors.join('')}</dl>`;
}

const say = (words: Speaker, key: string): string => escaped(words.say(key));

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
