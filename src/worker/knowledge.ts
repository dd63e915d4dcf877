import activities from '../../flows/fitting/activities.json';
import advice from '../../flows/fitting/advice.json';
import cautions from '../../flows/fitting/cautions.json';
import floors from '../../flows/fitting/floors.json';
import flow from '../../flows/fitting/flow.json';
import rules from '../../flows/fitting/rules.json';
import shoeKinds from '../../flows/fitting/shoe-kinds.json';
import sources from '../../flows/sources.json';
import type { Knowledge } from '../flow/knowledge.ts';

/** The flow folder as built in. `fit check` has held it to its schema, so it is taken as it is. */
export const knowledge = {
  flow,
  activities,
  floors,
  shoeKinds,
  rules,
  cautions,
  advice,
  sources,
} as unknown as Knowledge;
