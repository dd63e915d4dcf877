/** What a try-on task cannot be done without, from the shop's kit. A task that is not listed needs a clear floor only. */
const NEEDS: Readonly<Record<string, string>> = {
  'ramp-down': 'ramp',
  stairs: 'box',
  'rope-turns': 'rope',
  'treadmill-run': 'treadmill',
  'pedal-press': 'box',
};

/**
 * The tasks that can be done with what the shop says it has. Which kit a task needs is common practice.
 *
 * @example
 * withKit(['walk', 'ramp-down', 'stairs'], ['box']) // ['walk', 'stairs']
 */
export function withKit(tasks: readonly string[], kit: readonly string[]): readonly string[] {
  return tasks.filter((task) => NEEDS[task] === undefined || kit.includes(NEEDS[task]));
}
