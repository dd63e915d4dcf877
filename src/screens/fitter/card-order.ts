import type { Copy } from '../../card/card.ts';
import { fittersFormat } from '../../card/fitters-format.ts';
import type { Shop } from '../../card/shop.ts';
import type { CardOrder } from '../../worker/line-service.ts';
import type { BenchTicket } from './bench-ticket.ts';
import { dayOf } from './day.ts';

/**
 * What the worker needs to draw a card at the bench: the customer's in their language and the shop's format, the
 * fitter's on a full page in `language`.
 */
export const cardOrder = (
  { visit, id }: BenchTicket,
  letters: readonly string[],
  shop: Shop,
  copy: Copy,
  language: string,
): CardOrder => ({
  visit,
  shop,
  date: dayOf(new Date()),
  ticket: id,
  origin: location.origin + location.pathname.replace(/[^/]*$/, '').replace(/\/$/, ''),
  copy,
  format: copy === 'fitter' ? fittersFormat(shop.cardFormat) : shop.cardFormat,
  language: copy === 'fitter' ? language : visit.language,
  letters,
});
