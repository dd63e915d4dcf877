import type { Flow } from '../../flow/format.ts';
import { addUp, type Gaps, NO_GAPS } from '../../gaps/gaps.ts';
import { gapsOf } from '../../gaps/gaps-of.ts';
import type { Line } from '../../pipeline.ts';
import { addTallies, type SizeTally, sizeTallies } from '../../sizing/suggest-offset.ts';
import type { Store } from '../../storage/store.ts';

/** One record for all closed visits: sums alone, so that no visit can be read back. */
export const GAPS_TALLY = 'gaps';
/** How boxes felt, by model. */
export const SIZES_TALLY = 'sizes';

/** Adds one closed visit to the sums: what the range lacked, and how boxes fetched for a measured foot felt. */
export async function addTally(store: Store, line: Line, flow: Flow, minutes: number | undefined): Promise<void> {
  const { visit, profile, shortlist } = line;
  const lacked = gapsOf(visit, profile, shortlist, flow, minutes);
  await store.update<Gaps>('tallies', GAPS_TALLY, (old) => addUp([old ?? NO_GAPS, lacked]));
  const felt = profile.size.from === 'measured' ? sizeTallies(visit.tryOns) : [];
  if (felt.length === 0) return;
  await store.update<readonly SizeTally[]>('tallies', SIZES_TALLY, (old) => addTallies([...(old ?? []), ...felt]));
}
