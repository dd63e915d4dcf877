/**
 * How often one thing takes each place when the importances vary: entry r is the share of the sets of importances
 * under which thing `of` comes (r + 1)-th.
 *
 * The rank acceptability index of stochastic multicriteria acceptability analysis (Lahdelma & Salminen 2001). Worth
 * is the weighted sum of `parts`; for a geometric mean hand over logarithms, which rank alike. A thing that ties with
 * another takes the later place: twins are no clear first.
 */
export function rankAcceptability(
  parts: readonly (readonly number[])[],
  importances: Float64Array,
  of: number,
): readonly number[] {
  const things = parts.length;
  const needs = parts[0]?.length ?? 0;
  const sets = needs === 0 ? 0 : importances.length / needs;
  const counts = new Array<number>(things).fill(0);
  const own = parts[of] as readonly number[];
  // How much better than the one watched each other thing is, need by need.
  const ahead = Float64Array.from(parts.flatMap((row) => row.map((part, j) => part - (own[j] as number))));
  for (let k = 0; k < sets; k += 1) {
    let place = -1;
    for (let i = 0; i < things; i += 1) {
      let lead = 0;
      for (let j = 0; j < needs; j += 1)
        lead += (importances[k * needs + j] as number) * (ahead[i * needs + j] as number);
      if (lead >= 0) place += 1;
    }
    counts[place] = (counts[place] as number) + 1;
  }
  return counts.map((count) => (sets === 0 ? 0 : count / sets));
}

/**
 * How many sets are needed for a share to be within `error` of the truth, 19 times in 20, at worst (a share of one
 * half): 1.96² / (4 error²), the normal approximation. The number of needs does not matter.
 *
 * @example
 * setsFor(0.02) // 2401
 */
export function setsFor(error: number): number {
  return Math.ceil(1.96 ** 2 / (4 * error ** 2) - 1e-9);
}
