import type { Reason } from './profile.ts';
import { byText } from './told.ts';

/** Reasons in the order of their rules, each once. */
export function mergeReasons(reasons: readonly (Reason | undefined)[]): readonly Reason[] {
  const once = new Map<string, Reason>();
  for (const reason of reasons) if (reason) once.set(`${reason.rule} ${reason.from}`, reason);
  return [...once].sort(([a], [b]) => byText(a, b)).map(([, reason]) => reason);
}
