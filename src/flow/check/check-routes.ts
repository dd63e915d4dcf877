import type { Finding } from '../../units/result.ts';
import type { Answers } from '../answers.ts';
import type { Flow } from '../format.ts';
import type { Tables } from '../options.ts';
import { inPlay } from '../route.ts';
import { type Walk, walk } from '../walk.ts';
import type { Content } from './content.ts';
import type { JsonDocument } from './document.ts';
import { findingAt } from './finding-at.ts';
import { optionPlaces, type QuestionPlace, questionPlaces, rowPlaces } from './question-places.ts';

/** What a walk along every route shows: questions and options met never or always, dead ends, and the flow's own bounds. */
export function checkRoutes(content: Content, tables: Tables, walked: Walk): readonly Finding[] {
  const { flow, flowDocument } = content;
  if (!flow || !flowDocument) return [];
  return [
    ...questionPlaces(flow).flatMap((each) => metFindings(each, flowDocument, walked)),
    ...boundFindings(flow, flowDocument, tables, walked),
    ...typicalFindings(flow, flowDocument, content.stories),
  ];
}

function metFindings(
  each: ReturnType<typeof questionPlaces>[number],
  document: JsonDocument,
  walked: Walk,
): readonly Finding[] {
  const { question, place } = each;
  const met = walked.met.get(question.id);
  if (!met || met.asked === 'never') return [findingAt(document, [...place, 'askWhen'], 'never-asked')];
  const always = question.askWhen && met.asked === 'always';
  return [
    ...(always ? [findingAt(document, [...place, 'askWhen'], 'always-asked')] : []),
    ...(met.stuck ? [findingAt(document, place, 'nothing-to-answer')] : []),
    ...limits(each).flatMap(({ id, place: at }) => {
      const offered = met.offered.get(id);
      if (offered === 'sometimes') return [];
      const code = offered === 'always' ? 'option-always-offered' : 'option-never-offered';
      return [findingAt(document, at, code)];
    }),
  ];
}

/** What is not offered to everybody, and where the condition stands. A row that is in no table is told as such alone. */
const limits = (each: QuestionPlace) => [
  ...optionPlaces(each).flatMap(({ option, place }) =>
    option.showWhen ? [{ id: option.id, place: [...place, 'showWhen'] }] : [],
  ),
  ...rowPlaces(each).flatMap(({ rows, place }) => rows.map((id) => ({ id, place: [...place, 'when'] }))),
];

function boundFindings(flow: Flow, document: JsonDocument, tables: Tables, walked: Walk): readonly Finding[] {
  const { longest, shortWays } = flow.bounds;
  const tooLong = (counted: number, bound: number) => ({ value: String(counted), data: { bound } });
  return [
    ...(walked.longest > longest
      ? [findingAt(document, ['bounds', 'longest'], 'too-many-questions', tooLong(walked.longest, longest))]
      : []),
    ...shortWays.flatMap(({ when, screens }, i) => {
      const way = walk(flow, tables, when);
      const place = ['bounds', 'shortWays', i];
      if (way.answerPaths === 0n) return [findingAt(document, [...place, 'when'], 'short-way-never')];
      if (way.longest <= screens) return [];
      return [findingAt(document, [...place, 'screens'], 'short-way-too-long', tooLong(way.longest, screens))];
    }),
  ];
}

/** Held to only where stories are there to hold it to. */
function typicalFindings(
  flow: Flow,
  document: JsonDocument,
  stories: ReadonlyMap<string, JsonDocument>,
): readonly Finding[] {
  const { story, screens } = flow.bounds.typical;
  if (stories.size === 0) return [];
  const answers = (stories.get(story)?.value as { readonly answers?: Answers } | undefined)?.answers;
  if (!answers) return [findingAt(document, ['bounds', 'typical', 'story'], 'typical-story-missing', { value: story })];
  const met = inPlay(flow, answers).length;
  if (met <= screens) return [];
  const further = { value: String(met), data: { bound: screens } };
  return [findingAt(document, ['bounds', 'typical', 'screens'], 'typical-too-long', further)];
}
