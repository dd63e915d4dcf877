import { withKit } from '../../../card/task-kit.ts';
import { tasksOf } from '../../../card/tasks.ts';
import { heldBecause, taskGate, unevenTaskGate } from '../../../profile/movement-gate.ts';
import type { Facts } from '../../../profile/profile.ts';

/** Where nobody may wear two different shoes: after falls, and where nobody asked. */
const NEVER_UNEVEN: readonly string[] = ['conditions:falls-or-unsteady', 'signs'];

export interface TasksToTry {
  readonly open: readonly string[];
  /** How many are held back. */
  readonly held: number;
  /** The answers that hold them back, as a reason's `from`. */
  readonly because: readonly string[];
  /** Whether two different shoes may be worn, for standing and a slow walk. */
  readonly mayBeUneven: boolean;
}

/**
 * What to try at the bench: the activity's tasks that the kit allows and that are open to this customer. With
 * different shoes left and right only standing and a slow walk, and never after falls.
 */
export function tasksToTry(
  tasks: readonly string[],
  kit: readonly string[],
  facts: Facts,
  uneven: boolean,
): TasksToTry {
  const possible = withKit(tasks, kit);
  const asked = facts['health-asked'] === 'asked';
  const { gentle, moving } = tasksOf(possible, facts, taskGate, { asked, tellsHealth: true });
  const open = [...gentle, ...moving];
  const mayBeUneven = !heldBecause(facts).some((from) => NEVER_UNEVEN.includes(from));
  return {
    open: uneven && mayBeUneven ? open.filter((task) => unevenTaskGate(task) === 'open') : open,
    held: possible.length - open.length,
    because: heldBecause(facts),
    mayBeUneven,
  };
}

/** The tasks of the activities chosen, each once, the first activity's first. */
export function tasksOfActivities(
  activities: readonly { readonly id: string; readonly tasks: readonly string[] }[],
  facts: Facts,
): readonly string[] {
  const chosen = [facts['activity'], facts['second-activity']];
  return [...new Set(chosen.flatMap((id) => activities.find((row) => row.id === id)?.tasks ?? []))];
}
