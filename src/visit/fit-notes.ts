/** What is looked at on the foot in the shoe, each in a few words to tap. Words: `try-on.note.<id>`. */
export const FIT_NOTES = {
  'lace-gap': ['closed', 'even', 'wide', 'uneven'],
  heel: ['holds', 'lifts-a-little', 'lifts'],
  midfoot: ['loose', 'snug', 'presses'],
  'toe-room': ['short', 'right', 'long'],
  collar: ['clear', 'touches', 'rubs'],
  bend: ['behind', 'at-ball', 'ahead'],
} as const;

/** How a task felt. Words: `try-on.task.<id>`. */
export const TASK_FELT = ['good', 'so-so', 'not-good'] as const;

/** Where a shoe can rub, seen from above; each on either foot. Words: `try-on.spot.<id>`. */
export const RUB_SPOTS = [
  'big-toe',
  'toes',
  'little-toe',
  'ball-inner',
  'ball-outer',
  'instep',
  'arch',
  'ankle-inner',
  'ankle-outer',
  'heel',
] as const;
export type RubSpot = (typeof RUB_SPOTS)[number];
