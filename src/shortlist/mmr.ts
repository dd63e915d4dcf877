/**
 * Picks a few things that are good and not alike, one at a time: each pick has the best
 * `lambda × relevance − (1 − lambda) × likeness to the likest one already picked`.
 *
 * Maximal marginal relevance, Carbonell & Goldstein, SIGIR 1998, 335–336 (DOI 10.1145/290941.291025). Relevance and
 * likeness are both 0 to 1; `lambda` 1 looks at relevance alone, 0 at difference alone. Equal values go to the one
 * that stands first, so hand the things over in their order.
 */
export interface Pick {
  readonly index: number;
  /** What it was worth when it was picked. */
  readonly marginal: number;
}

/** The next pick of `candidates` (indices), given what is `picked`; nothing when there is no candidate. */
export function nextPick(
  candidates: readonly number[],
  picked: readonly number[],
  relevance: (i: number) => number,
  likeness: (i: number, j: number) => number,
  lambda: number,
): Pick | undefined {
  let best: Pick | undefined;
  for (const index of candidates) {
    if (picked.includes(index)) continue;
    let likest = 0;
    for (const other of picked) likest = Math.max(likest, likeness(index, other));
    const marginal = lambda * relevance(index) - (1 - lambda) * likest;
    if (best === undefined || marginal > best.marginal + 1e-12) best = { index, marginal };
  }
  return best;
}
