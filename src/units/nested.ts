/** Groups within groups. What people write by hand goes some ten deep; readers that call themselves give out at thousands. Our choice. */
const DEEPEST = 100;

/**
 * Where brackets in a JSON text stand deeper in each other than any file of ours; nothing when they do not.
 *
 * @example
 * tooDeepAt('[[1]]') // undefined
 */
export function tooDeepAt(text: string): number | undefined {
  let depth = 0;
  for (const match of text.matchAll(/"(?:[^"\\\n]|\\.)*"?|[[\]{}]/g)) {
    if (match[0] === '[' || match[0] === '{') depth += 1;
    else if (match[0] === ']' || match[0] === '}') depth -= 1;
    if (depth > DEEPEST) return match.index;
  }
  return undefined;
}
