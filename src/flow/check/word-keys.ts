import type { Flow, Question } from '../format.ts';
import { questionsOf } from '../route.ts';
import type { Content } from './content.ts';

/** Which words a language needs for a flow. */
export interface WordKeys {
  readonly needed: readonly string[];
  /** May be there, and are not missed if they are not. */
  readonly allowed: ReadonlySet<string>;
}

/** Words for questions and tables (`words.<lang>.json`) and for what rules say (`knowledge.<lang>.json`). */
export function wordKeys(
  flow: Flow,
  rows: Content['rows'],
): { readonly words: WordKeys; readonly knowledge: WordKeys } {
  const questions = questionsOf(flow);
  return {
    words: {
      needed: [
        ...flow.sections.map(({ id }) => `section.${id}`),
        ...questions.flatMap(neededFor),
        ...questions.flatMap((question) =>
          question.kind === 'number' ? question.units.map(({ id }) => `unit.${id}`) : [],
        ),
        ...grouped('activity', rows['activities.json']),
        ...rows['activities.json'].map(({ row }) => `unit.${row.unit}`),
        ...grouped('floor', rows['floors.json']),
        ...grouped('shoe-kind', rows['shoe-kinds.json']),
      ],
      allowed: new Set(questions.flatMap(allowedFor)),
    },
    knowledge: {
      needed: [
        ...rows['cautions.json'].map(({ row }) => `caution.${row.id}.text`),
        ...rows['cautions.json'].flatMap(({ row }) => (row.whom ? [`whom.${row.whom}`] : [])),
        ...rows['advice.json'].map(({ row }) => `advice.${row.id}.text`),
        ...rows['rules.json'].map(({ row }) => `rule.${row.id}.why`),
        ...rows['sources.json'].map(({ row }) => `source.${row.id}.found`),
        ...rows['activities.json'].flatMap(({ row }) =>
          row.tasks.flatMap((id) => [`task.${id}.name`, `task.${id}.feel`]),
        ),
        ...rows['activities.json'].flatMap(({ row }) =>
          row.otherFootwear ? [`other-footwear.${row.otherFootwear}.text`] : [],
        ),
      ],
      allowed: new Set(),
    },
  };
}

const grouped = (name: string, rows: readonly { readonly row: { readonly id: string; readonly group: string } }[]) =>
  rows.flatMap(({ row }) => [`${name}.${row.id}`, `${name}-group.${row.group}`]);

function neededFor(question: Question): readonly string[] {
  const key = `question.${question.id}`;
  const note = question.noteWhen ? [`${key}.note`] : [];
  return [`${key}.ask`, `${key}.why`, ...note, ...partsOf(question).map((part) => `${key}.${part}`)];
}

function partsOf(question: Question): readonly string[] {
  if (question.kind === 'body-map') return question.regions.map(({ id }) => `region.${id}`);
  if (question.kind === 'against-today') {
    return question.properties.flatMap(({ id, choices }) => [
      `property.${id}.name`,
      ...choices.map((choice) => `property.${id}.choice.${choice}`),
    ]);
  }
  if (!('options' in question)) return [];
  const own = 'table' in question.options ? [] : question.options;
  const extra = ('extra' in question && question.extra) || [];
  return [...own, ...extra].map(({ id }) => `option.${id}`);
}

const OPTIONAL = ['hint', 'option.yes', 'option.no', 'option.not-sure', 'option.skipped', 'option.rather-not-say'];
const allowedFor = (question: Question) => OPTIONAL.map((part) => `question.${question.id}.${part}`);
