/** One thing that may or may not be part of an answer, and in how many ways it can be: a share has three, an option one. */
export interface Part {
  readonly id: string;
  readonly ways: bigint;
}

/**
 * In how many ways between `least` and `most` of some parts can be picked, told apart by which of the `read` ones are
 * among them. The others, which nothing reads, are counted together.
 */
export function picks(
  parts: readonly Part[],
  read: ReadonlySet<string>,
  least: number,
  most: number,
): readonly { readonly picked: readonly string[]; readonly ways: bigint }[] {
  const unread = waysBySize(parts.filter(({ id }) => !read.has(id)));
  return subsets(parts.filter(({ id }) => read.has(id)))
    .map((subset) => ({
      picked: subset.map(({ id }) => id),
      ways: subset.reduce(
        (product, { ways }) => product * ways,
        restWays(unread, least - subset.length, most - subset.length),
      ),
    }))
    .filter(({ ways }) => ways > 0n);
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
