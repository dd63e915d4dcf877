import { LABEL_SYSTEMS, type LabelSystem } from '../stock/shoe.ts';
import type { Visit } from '../visit/visit.ts';

/**
 * The size system that a box's labels begin with, on the card and at the bench alike: the one the customer gave their
 * own size in, else EU.
 *
 * @example
 * labelSystem({ ...visit, answers: { 'now-size': { value: 6.5, unit: 'uk' } } }) // 'uk'
 */
export function labelSystem({ answers }: Pick<Visit, 'answers'>): LabelSystem {
  const size = answers['now-size'];
  const unit = typeof size === 'object' && 'unit' in size ? size.unit : undefined;
  const given = unit === 'mm' ? 'mondopoint' : unit;
  return LABEL_SYSTEMS.find((system) => system === given) ?? 'eu';
}
