/** Keys of the bench, single letters; the same in every language, and listed on screen. They can be switched off. */
export const SHORTCUTS = {
  t: 'tickets',
  p: 'profile',
  m: 'measure',
  l: 'line-up',
  f: 'feet',
  d: 'decide',
  u: 'undo',
} as const;
export type Shortcut = (typeof SHORTCUTS)[keyof typeof SHORTCUTS];

/** What a key press asks for; nothing while somebody types, or with Ctrl, Alt or Meta held. */
export function shortcutOf(event: KeyboardEvent): Shortcut | undefined {
  if (event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented) return undefined;
  const target = event.target as HTMLElement | null;
  if (target?.matches('input:not([type="radio"], [type="checkbox"]), textarea, select')) return undefined;
  return Object.hasOwn(SHORTCUTS, event.key) ? SHORTCUTS[event.key as keyof typeof SHORTCUTS] : undefined;
}
