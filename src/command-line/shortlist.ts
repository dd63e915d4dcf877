import { type Line, lineOf } from '../pipeline.ts';
import { said as mostSaid } from '../shortlist/meets.ts';
import type { Entry, LineUp } from '../shortlist/shortlist.ts';
import type { Words } from '../words/words.ts';
import { loadKnowledge, loadStock, loadVisit } from './load.ts';
import { FLAG, readOptions, TEXT } from './options.ts';
import { usage } from './refusal.ts';
import { json, type Said } from './said.ts';

/** Feeds the varied importances behind "closest on paper". Any number will do; one fixed one makes runs repeat. */
export const SEED = 1;

/** `fit shortlist <answers.json> --stock <stock.csv> [--json]`: the pairs to try, with reasons and misgivings. */
export function shortlist(args: readonly string[], words: Words): Said {
  const given = readOptions(args, { stock: TEXT, json: FLAG });
  const path = given.files[0];
  if (!path) throw usage('answers-missing');
  const knowledge = loadKnowledge();
  const { visit, findings } = loadVisit(path, knowledge);
  const { stock, findings: stockFindings } = loadStock(given.needed('stock'), new Date().toISOString());
  const line = lineOf(visit, knowledge, stock, SEED);
  const notes = [...findings, ...stockFindings.map((finding) => ({ ...finding, severity: 'note' as const }))];
  if (given.flag('json')) return { text: json(asJson(line)), findings: notes };
  const { outcome, lineUps } = line.shortlist;
  const text = [`outcome ${outcome}`, ...lineUps.flatMap((lineUp) => lineUpLines(lineUp, words))].join('\n');
  return { text: `${text}\n`, findings: notes };
}

function asJson({ shortlist: { outcome, lineUps, cautions } }: Line) {
  const entry = ({ shoe, place, part, boxes, reasons, misgivings, easeIn, unknown }: Entry) => ({
    shoe: shoe.id,
    place,
    part,
    boxes: boxes.map(({ box: { id, labels, place: shelf } }) => ({ id, labels, shelf })),
    reasons,
    misgivings,
    easeIn,
    unknown,
  });
  return {
    outcome,
    lineUps: lineUps.map(({ for: forWhat, entries, removed, ifDropped, moreWithout, sureness, whatIf }) => ({
      for: forWhat,
      entries: entries.map(entry),
      removed,
      ifDropped,
      ...(moreWithout ? { moreWithout } : {}),
      sureness,
      ...(whatIf ? { whatIf } : {}),
    })),
    removed: lineUps[0]?.removed ?? [],
    cautions: cautions.map(({ code, level, source }) => ({ code, level, source })),
  };
}

function lineUpLines(lineUp: LineUp, words: Words): readonly string[] {
  return [
    `for ${lineUp.for} (${lineUp.sureness})`,
    ...lineUp.entries.flatMap((entry) => [
      `  ${entry.place}. ${entry.shoe.name}: ${words.say(`part.${entry.part}`)}; ${entry.boxes
        .map(({ box }) => `${Object.values(box.labels)[0] ?? box.id} on shelf ${box.place}`)
        .join(', ')}`,
      ...mostSaid(entry.reasons, true).map(({ code, from }) => `     + ${words.say(`reason.${code}`)} (${from})`),
      ...entry.misgivings.map(({ code, from }) => `     - ${words.say(`misgiving.${code}`)} (${from})`),
    ]),
    ...lineUp.removed.map(({ must, count }) => `  ${must} left out ${count}`),
    ...lineUp.ifDropped.map(({ must, pairs }) => `  without ${must} there would be ${pairs}`),
  ];
}
