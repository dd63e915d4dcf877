import type { Ink } from './layout/mark.ts';
import type { Template } from './template.ts';

/**
 * Colours of a printed card. Each says its job twice, by shape or word as well, so that a grey copy loses nothing.
 * Contrast of every pair in use is tested by the WCAG formula.
 */
export const PAINTS: Readonly<Record<Ink, string>> = {
  ink: '#1b2430',
  soft: '#4a545f',
  rule: '#9aa5a6',
  thread: '#8a5a1f',
  tag: '#ecd9ae',
  band: '#f1dfb6',
  paper: '#ffffff',
};

const GROUNDS: ReadonlySet<Ink> = new Set(['tag', 'band']);

/** The paint for an ink. On black-only paper grounds are left bare (nothing is returned) and all else is black. */
export function paintOf(ink: Ink, kind: Template['ink']): string | undefined {
  if (kind === 'tag' || ink === 'paper') return PAINTS[ink];
  return GROUNDS.has(ink) ? undefined : '#000000';
}
