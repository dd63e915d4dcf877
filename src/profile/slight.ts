import type { AttributeKey } from '../attributes/attributes.ts';
import type { Knowledge } from '../flow/knowledge.ts';
import type { Facts, Reason } from './profile.ts';

/** A load below this of 0 to 1 comes up in passing: what it adds counts, and explains nothing. Our choice: a third. */
const SLIGHT = 1 / 3;

/**
 * Whether a reason rests on a load that is there in passing only. A walker lifts, bounces and turns a little too, and
 * every load asks for its own: told beside the others, those would hide what counts.
 */
export function isSlight(
  { rule }: Pick<Reason, 'rule'>,
  attribute: AttributeKey,
  facts: Facts,
  { rules }: Pick<Knowledge, 'rules'>,
): boolean {
  const asks = rules.find(({ id }) => id === rule)?.asks ?? [];
  return asks.some((ask) => {
    const load = ask.attribute === attribute && ask.per?.startsWith('load-') ? facts[ask.per] : undefined;
    return typeof load === 'number' && load < SLIGHT;
  });
}
