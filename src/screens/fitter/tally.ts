import type { Flow } from '../../flow/format.ts';
import { addUp, type Gaps, NO_GAPS } from '../../gaps/gaps.ts';
import { gapsOf } from '../../gaps/gaps-of.ts';
import type { Line } from '../../pipeline.ts';
import type { Store } from '../../storage/store.ts';

/** One record for all closed visits: sums alone, so that no visit can be read back. */
export const TALLY = 'gaps';

/** Adds one closed visit to the sums. */
export async function addTally(
  store: Store,
  { visit, profile, shortlist }: Line,
  flow: Flow,
  minutes: number | undefined,
): Promise<void> {
  const one = gapsOf(visit, profile, shortlist, flow, minutes);
  await store.update<Gaps>('tallies', TALLY, (old) => addUp([old ?? NO_GAPS, one]));
}
