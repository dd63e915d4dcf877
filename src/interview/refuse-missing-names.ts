interface Parts {
  readonly guards?: object;
  readonly actions?: object;
}

/**
 * Throws unless every guard and action the machine's configuration names is there to be run.
 *
 * XState skips an action it does not know and goes on, so an answer would be lost without a sound, and notices a missing
 * guard only when its event arrives.
 */
export function refuseMissingNames(config: unknown, parts: Parts): void {
  const missing = [
    ...namesUnder(config, 'guard').filter((name) => !Object.hasOwn(parts.guards ?? {}, name)),
    ...namesUnder(config, 'actions').filter((name) => !Object.hasOwn(parts.actions ?? {}, name)),
  ];
  if (missing.length > 0) throw new Error(`The interview names what nobody wrote: ${[...new Set(missing)].join(', ')}`);
}

function namesUnder(node: unknown, key: 'guard' | 'actions'): readonly string[] {
  if (Array.isArray(node)) return node.flatMap((each) => namesUnder(each, key));
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([name, value]) =>
    name === key ? [value].flat().flatMap(nameOf) : namesUnder(value, key),
  );
}

/** A name is written bare or as the `type` of an object; a function in its place needs no name. */
function nameOf(reference: unknown): readonly string[] {
  if (typeof reference === 'string') return [reference];
  if (typeof reference === 'object' && reference !== null && 'type' in reference) return [String(reference.type)];
  return [];
}
