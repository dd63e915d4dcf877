import type { Facts } from '../profile/profile.ts';
import type { CardTasks } from './card.ts';

/**
 * Whether a try-on task may be done, as far as the facts tell: `held` after a recent sprain, in pregnancy, after
 * falls, with calf, heel or bone pain, or where health was not asked about.
 */
export type TaskGate = (task: string, facts: Facts) => 'open' | 'held';

/** For an activity without a gentle task of its own, so that nobody is left with nothing to try. */
const EVERYBODY = ['stand-still', 'walk'];

/** Facts about which nothing is known of health: only tasks that are safe for everybody are open to them. */
const MOST_CAREFUL: Facts = { 'health-asked': 'skipped' };

/**
 * Sorts an activity's try-on tasks into gentle ones and moving ones.
 *
 * A fitter's copy, and a customer's who wants their health notes printed, lists the tasks that are open and no others.
 * A customer's copy without them must not tell a sprained ankle from a sound one, so for everybody it holds the moving
 * tasks back behind a box that the fitter ticks. Where health was not asked about there are only gentle tasks.
 */
export function tasksOf(
  tasks: readonly string[],
  facts: Facts,
  gate: TaskGate,
  { asked, tellsHealth }: { readonly asked: boolean; readonly tellsHealth: boolean },
): CardTasks {
  const own = tasks.filter((task) => gate(task, MOST_CAREFUL) === 'open');
  const gentle = own.length > 0 ? own : EVERYBODY;
  const moving = tasks.filter((task) => !own.includes(task));
  if (!asked) return { gentle, moving: [], needsFitter: false };
  if (tellsHealth) return { gentle, moving: moving.filter((task) => gate(task, facts) === 'open'), needsFitter: false };
  return { gentle, moving, needsFitter: moving.length > 0 };
}
