/**
 * How often each thing takes each place when the importances vary: row i, column r is the share of the sets of
 * importances under which thing i comes (r + 1)-th.
 *
 * The rank acceptability index of stochastic multicriteria acceptability analysis (Lahdelma & Salminen 2001). Worth
 * is the weighted sum of `parts`; for a geometric mean hand over logarithms, which rank alike. A thing that ties with
 * another takes the later place: twins are no clear first.
 */
export function rankAcceptability(parts: readonly (readonly number[])[], importances: Float64Array): number[][] {
  const things = parts.length;
  const needs = parts[0]?.length ?? 0;
  const sets = needs === 0 ? 0 : importances.length / needs;
  const counts = parts.map(() => new Array<number>(things).fill(0));
  const flat = Float64Array.from(parts.flat());
  const worth = new Float64Array(things);
  for (let k = 0; k < sets; k += 1) {
    for (let i = 0; i < things; i += 1) {
      let sum = 0;
      for (let j = 0; j < needs; j += 1)
        sum += (importances[k * needs + j] as number) * (flat[i * needs + j] as number);
      worth[i] = sum;
    }
    for (let i = 0; i < things; i += 1) {
      const own = worth[i] as number;
      let place = -1;
      for (let other = 0; other < things; other += 1) if ((worth[other] as number) >= own) place += 1;
      const row = counts[i] as number[];
      row[place] = (row[place] as number) + 1;
    }
  }
  return counts.map((row) => row.map((count) => (sets === 0 ? 0 : count / sets)));
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
