/**
 * A line a story: screens, taps, outcome, hold, first pair, and how long it took here. `npm run -s stories`.
 *
 * Taps are counted as a browser walk makes them: one for a button, one more for a table's group, one for each tick and
 * for going on, two to own up to a sign, three for a place on the body; start and "show my pairs" besides.
 */
import { readdirSync } from 'node:fs';
import { loadKnowledge, loadStock, loadVisit } from '../../src/command-line/load.ts';
import type { Answer } from '../../src/flow/answers.ts';
import type { Question } from '../../src/flow/format.ts';
import { spelledOptions, tablesOf } from '../../src/flow/options.ts';
import { questionsOf, routeOf } from '../../src/flow/route.ts';
import { lineOf } from '../../src/pipeline.ts';

const FOLDER = 'flows/fitting/stories';
const knowledge = loadKnowledge();
const tables = tablesOf(knowledge);
const { stock } = loadStock('demo/stock.csv', '2026-11-25T08:00:00');
const START_AND_SHOW = 2;

function taps(question: Question, answer: Answer): number {
  switch (question.kind) {
    case 'one-of': {
      const rows = 'table' in question.options ? tables[question.options.table] : [];
      return rows.some(({ id }) => id === answer) ? 2 : 1;
    }
    case 'yes-no':
      return 1;
    case 'some-of':
      return standsAlone(question, answer) ? 1 : (answer as readonly string[]).length + 1;
    case 'shares':
      return standsAlone(question, answer) ? 1 : sharesTaps(question.id, answer as Readonly<Record<string, string>>);
    case 'number':
      return answer === 'not-sure' ? 1 : 2;
    case 'against-today':
      return Object.values(answer).filter((choice) => choice !== 'no-preference').length + 1;
    case 'signs':
      return standsAlone(question, answer) ? 1 : 2 * (answer as readonly string[]).length + 1;
    case 'body-map':
      return typeof answer === 'string' ? 1 : 3 * Object.keys(answer).length + 1;
  }
}

/** "None of these" and its like: a button that answers at once. */
function standsAlone(question: Question, answer: Answer): boolean {
  const given = Array.isArray(answer) ? answer : Object.keys(answer);
  return spelledOptions(question).some(({ id, alone }) => alone && given.includes(id));
}

/**
 * The first tick is "mostly" and later ones "some"; each that should be otherwise is one tap more, and so is the page
 * that asks how often, which one floor alone goes without.
 */
function sharesTaps(question: string, answer: Readonly<Record<string, string>>): number {
  const ticked = Object.values(answer);
  const other = ticked.filter((share, at) => share !== (at === 0 ? 'mostly' : 'some')).length;
  const asked = ticked.length > (question === 'floors' ? 1 : 0) ? 1 : 0;
  return ticked.length + other + asked + 1;
}

for (const file of readdirSync(FOLDER).sort()) {
  const { visit } = loadVisit(`${FOLDER}/${file}`, knowledge);
  const route = routeOf(knowledge.flow, visit.answers);
  const asked = questionsOf(knowledge.flow).filter(({ id }) => route.asked.includes(id));
  const tapped = asked.reduce((sum, question) => {
    const answer = route.answers[question.id];
    return answer === undefined ? sum : sum + taps(question, answer);
  }, START_AND_SHOW);
  const { profile, shortlist } = lineOf(visit, knowledge, stock, 1);
  const first = shortlist.lineUps.map(({ entries }) => entries[0]?.shoe.name ?? 'none').join(' / ') || '–';
  const name = file.replace('.json', '').padEnd(30);
  process.stdout.write(
    `${name} ${String(asked.length).padStart(2)} screens ${String(tapped).padStart(3)} taps  ${profile.outcome.padEnd(14)} hold ${profile.hold.padEnd(15)} ${first}\n`,
  );
}
