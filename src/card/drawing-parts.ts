/** What needs the fonts and the PDF writer, so that both are fetched once and together, when a card is first drawn. */
export { drawCard } from './draw-card.ts';
export { measureOf } from './font/metrics.ts';
export { unprintableInStock } from './unprintable-stock.ts';
