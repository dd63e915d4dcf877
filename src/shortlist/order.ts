import { byText } from '../profile/told.ts';
import type { Scored } from './scored.ts';

/**
 * Which of two pairs comes first: the more desirable, then the one with fewer figures missing, then the cheaper (a
 * price not recorded comes last), then by id, so that no two ever tie. For `sort`.
 */
export function byOrder(a: Scored, b: Scored): number {
  return (
    b.desirability - a.desirability ||
    a.unknown.length - b.unknown.length ||
    byPrice(a.shoe.numbers.price, b.shoe.numbers.price) ||
    byText(a.shoe.id, b.shoe.id)
  );
}

function byPrice(a: number | undefined, b: number | undefined): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  return a - b;
}
