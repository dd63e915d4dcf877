/** One word file: nested keys, sentences at the leaves. Read from `flows/words/<language>/` and a flow's own folder. */
export interface Bundle {
  readonly [key: string]: string | Bundle;
}

/**
 * The word files of one language laid over each other; where two say the same key, the later one is heard.
 *
 * A key that is a sentence in one file and a group of sentences in another is a bug and throws.
 *
 * @example
 * ```ts
 * mergeBundles([{ unit: { mm: 'mm' } }, { unit: { cm: 'cm' } }]) // { unit: { mm: 'mm', cm: 'cm' } }
 * ```
 */
export function mergeBundles(bundles: readonly Bundle[]): Bundle {
  return bundles.reduce((under, over) => laidOver(under, over, ''), {});
}

function laidOver(under: Bundle, over: Bundle, path: string): Bundle {
  const merged: Record<string, string | Bundle> = { ...under };
  for (const [key, value] of Object.entries(over)) {
    const place = path === '' ? key : `${path}.${key}`;
    const before = Object.hasOwn(merged, key) ? merged[key] : undefined;
    if (before !== undefined && typeof before !== typeof value) {
      throw new Error(`"${place}" is a sentence in one word file and a group in another`);
    }
    merged[key] = typeof value === 'object' ? laidOver(typeof before === 'object' ? before : {}, value, place) : value;
  }
  return merged;
}

/**
 * Every sentence of a bundle by its dotted key, plural endings included.
 *
 * @example
 * ```ts
 * sentencesOf({ unit: { mm: 'mm' } }) // Map { 'unit.mm' => 'mm' }
 * ```
 */
export function sentencesOf(bundle: Bundle): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const walk = (part: Bundle, path: string): void => {
    for (const [key, value] of Object.entries(part)) {
      if (typeof value === 'string') found.set(path + key, value);
      else walk(value, `${path}${key}.`);
    }
  };
  walk(bundle, '');
  return found;
}
