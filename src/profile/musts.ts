import type { Fired } from './fire.ts';
import { mergeReasons } from './merge-reasons.ts';
import type { Must } from './profile.ts';
import { byText } from './told.ts';

/** Filters, each once with every reason for it. What no answer stands behind shuts no shoe out. */
export function mustsOf(fired: readonly Fired[]): readonly Must[] {
  const gathered = new Map<string, Must>();
  for (const { rule, reason } of fired) {
    const traced = reason();
    for (const { attribute, value } of traced ? (rule.musts ?? []) : []) {
      const key = `${attribute} ${typeof value} ${value}`;
      const before = gathered.get(key)?.reasons ?? [];
      gathered.set(key, { attribute, value, reasons: mergeReasons([...before, traced]) });
    }
  }
  return [...gathered].sort(([a], [b]) => byText(a, b)).map(([, must]) => must);
}
