/**
 * The longest a text may be, in characters, by what it is. Source: common practice. A question stands in two lines at
 * arm's length and an option in two lines of its button; a stop sign may take one more, since it has to be exact.
 */
const BOUNDS: readonly (readonly [RegExp, number])[] = [
  [/^question\.[^.]+\.ask$/, 70],
  [/^question\.signs\.option\./, 75],
  [/^question\.[^.]+\.option\./, 45],
  [/^question\.[^.]+\.(property|region)\./, 45],
  [/^question\.[^.]+\.(why|hint)$/, 160],
  [/^(section|unit)\./, 45],
  [/^(activity|floor|shoe-kind)(-group)?\./, 45],
  [/^(caution|advice|other-footwear)\.[^.]+\.text$/, 320],
  [/^task\.[^.]+\.name$/, 70],
  [/^task\.[^.]+\.feel$/, 160],
];

export const longestText = (key: string): number | undefined => BOUNDS.find(([pattern]) => pattern.test(key))?.[1];
