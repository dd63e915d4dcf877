import activities from '../../flows/fitting/activities.json' with { type: 'json' };
import advice from '../../flows/fitting/advice.json' with { type: 'json' };
import cautions from '../../flows/fitting/cautions.json' with { type: 'json' };
import floors from '../../flows/fitting/floors.json' with { type: 'json' };
import flow from '../../flows/fitting/flow.json' with { type: 'json' };
import rules from '../../flows/fitting/rules.json' with { type: 'json' };
import shoeKinds from '../../flows/fitting/shoe-kinds.json' with { type: 'json' };
import sources from '../../flows/sources.json' with { type: 'json' };
import type { Knowledge } from '../../src/flow/knowledge.ts';

/** What the main flow knows, as it stands in its folder. */
export const MAIN = { flow, activities, floors, shoeKinds, rules, cautions, advice, sources } as unknown as Knowledge;
