import type { Ask, Rule } from '../../src/flow/knowledge.ts';
import { MAIN } from '../profile/main-knowledge.ts';

/** A rule of the main flow by its id; a test that names a rule that is gone fails here. */
export function ruleOf(id: string): Rule {
  const rule = MAIN.rules.find((each) => each.id === id);
  if (!rule) throw new Error(`No rule ${id}`);
  return rule;
}

/** What a rule asks of one property. */
export function askOf(id: string, attribute: Ask['attribute']): Ask {
  const ask = ruleOf(id).asks?.find((each) => each.attribute === attribute);
  if (!ask) throw new Error(`Rule ${id} asks nothing of ${attribute}`);
  return ask;
}

/** The two ends of what a rule asks for. */
export function idealOf(id: string, attribute: Ask['attribute']): readonly [number, number] {
  const { ideal } = askOf(id, attribute);
  if (!ideal) throw new Error(`Rule ${id} gives no range for ${attribute}`);
  return ideal;
}

/** Whether a rule asks nothing of any property and shuts nothing out: it only says something. */
export const onlySays = (id: string): boolean => {
  const { asks, musts, outcome } = ruleOf(id);
  return !asks && !musts && !outcome;
};

/** The urgencies of the cautions that a rule names. */
export const levelsOf = (id: string): readonly string[] =>
  (ruleOf(id).cautions ?? []).map((code) => MAIN.cautions.find((row) => row.id === code)?.level ?? 'unknown');
