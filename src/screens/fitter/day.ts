/** The device's own date, `2026-11-25`. */
export function dayOf(now: Date): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** The device's own date and time, `2026-11-25T10:30:05`, as stock lists and marks are stamped. */
export const momentOf = (now: Date): string => `${dayOf(now)}T${now.toTimeString().slice(0, 8)}`;
