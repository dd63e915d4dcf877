/** One thing that may or may not be part of an answer, and in how many ways it can be: a share has three, an option one. */
export interface Part {
  readonly id: string;
  readonly ways: bigint;
}

/**
 * In how many ways between `least` and `most` of some parts can be picked, told apart by which of the `read` ones are
 * among them, and by whether any of each of the `gathered` sets is. The others, which nothing reads, are counted together.
 */
export function picks(
  parts: readonly Part[],
  read: ReadonlySet<string>,
  least: number,
  most: number,
  gathered: readonly (readonly string[])[] = [],
): readonly { readonly picked: readonly string[]; readonly ways: bigint }[] {
  const { unread, sorts } = sortedBy(
    gathered,
    parts.filter(({ id }) => !read.has(id)),
  );
  const rest = waysBySize(unread);
  return subsets(parts.filter(({ id }) => read.has(id))).flatMap((subset) =>
    subsets(sorts)
      .map((some) => ({
        picked: [...subset, ...some.flatMap((sort) => sort.slice(0, 1))].map(({ id }) => id),
        ways: subset.reduce(
          (product, { ways }) => product * ways,
          restWays(some.map(atLeastOne).reduce(together, rest), least - subset.length, most - subset.length),
        ),
      }))
      .filter(({ ways }) => ways > 0n),
  );
}

/** Parts that stand in the same gathered sets, together; and those that stand in none. */
function sortedBy(gathered: readonly (readonly string[])[], parts: readonly Part[]) {
  const sorts = new Map<string, Part[]>();
  for (const part of parts) {
    const key = gathered.flatMap((set, i) => (set.includes(part.id) ? [i] : [])).join();
    sorts.set(key, [...(sorts.get(key) ?? []), part]);
  }
  const unread = sorts.get('') ?? [];
  sorts.delete('');
  return { unread, sorts: [...sorts.values()] };
}

const atLeastOne = (sort: readonly Part[]): readonly bigint[] => [0n, ...waysBySize(sort).slice(1)];

/** Ways by size of two picks made side by side: the product of the two polynomials. */
function together(left: readonly bigint[], right: readonly bigint[]): readonly bigint[] {
  const sizes = Array.from({ length: left.length + right.length - 1 }, () => 0n);
  left.forEach((a, i) => {
    right.forEach((b, j) => {
      sizes[i + j] = (sizes[i + j] ?? 0n) + a * b;
    });
  });
  return sizes;
}

/** Ways to pick exactly 0, 1, 2… of the parts: the coefficients of the product of (1 + ways·x). */
function waysBySize(parts: readonly Part[]): readonly bigint[] {
  let sizes = [1n];
  for (const { ways } of parts) sizes = [...sizes, 0n].map((count, size) => count + ways * (sizes[size - 1] ?? 0n));
  return sizes;
}

const restWays = (bySize: readonly bigint[], least: number, most: number): bigint =>
  bySize.reduce((sum, ways, size) => (size >= least && size <= most ? sum + ways : sum), 0n);

function subsets<T>(items: readonly T[]): readonly (readonly T[])[] {
  let all: readonly (readonly T[])[] = [[]];
  for (const item of items) all = [...all, ...all.map((each) => [...each, item])];
  return all;
}
