import { conditionWords, type Naming } from './condition-words.ts';
import type { FlowWords } from './flow-words.ts';
import type { Flow, Question } from './format.ts';
import { questionsOf } from './route.ts';
import { escaped, lines, textBlock } from './svg-text.ts';

/** All in pixels of a drawing that is as wide as an A4 page at 96 dots an inch, and as long as the flow. */
const WIDTH = 794;
const LEFT = 60;
const BOX = { width: 330, pad: 10, line: 17, gap: 18 };
const NOTE = { left: LEFT + BOX.width + 34, characters: 46 };
/** Characters that fit a line of a box at 13 px. Source: common practice, half an em each and some to spare. */
const BOX_CHARACTERS = 44;

/**
 * A flow as one picture: its sections and questions from top to bottom, a line past every question that some visitors
 * are not asked, and beside it, in words, who is.
 *
 * The words of questions and options are the flow's own; an option without words is called by its id.
 */
export function mapOf(flow: Flow, words: FlowWords): string {
  const naming = namingFrom(flow, words);
  const parts: string[] = [];
  let y = 84;
  parts.push(knot(words.say('map.start'), y));
  y += 34;
  for (const section of flow.sections) {
    const name = say(words, `section.${section.id}`, section.id);
    parts.push(`<text class="section" x="${LEFT}" y="${y + 22}">${escaped(name)}</text>`);
    y += 38;
    for (const question of section.questions) {
      const drawn = questionBox(question, y, words, naming);
      parts.push(drawn.svg);
      y += drawn.height + BOX.gap;
    }
  }
  parts.push(knot(words.say('map.end'), y + 6));
  const title = words.say('map.title', { flow: flow.id });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${y + 40}" width="${WIDTH}" height="${y + 40}" role="img" aria-label="${escaped(title)}" lang="${escaped(words.language)}">`,
    `<style>${STYLE}</style>`,
    `<rect width="100%" height="100%" fill="#fff"/>`,
    `<text class="title" x="${LEFT}" y="46">${escaped(title)}</text>`,
    `<line class="way" x1="${LEFT - 20}" y1="84" x2="${LEFT - 20}" y2="${y + 6}"/>`,
    ...parts,
    '</svg>',
    '',
  ].join('\n');
}

const STYLE =
  'text{font:13px system-ui,sans-serif;fill:#222}.title{font-size:20px;font-weight:700}.section{font-size:15px;font-weight:700}' +
  '.id{font-size:11px;fill:#555}.box{fill:#fff;stroke:#222;stroke-width:1.5}.maybe{stroke-dasharray:5 4}' +
  '.way{stroke:#222;stroke-width:1.5;fill:none}.knot{fill:#222}';

const knot = (label: string, y: number): string =>
  `<circle class="knot" cx="${LEFT - 20}" cy="${y}" r="6"/><text x="${LEFT}" y="${y + 5}">${escaped(label)}</text>`;

function questionBox(question: Question, y: number, words: FlowWords, naming: Naming) {
  const asked = lines(say(words, `question.${question.id}.ask`, question.id), BOX_CHARACTERS);
  const condition = question.askWhen && conditionWords(question.askWhen, words, naming);
  const note = condition ? lines(words.say('map.only-if', { condition }), NOTE.characters) : [];
  const marks = [question.id, question.kind, ...(question.health ? [words.say('map.health')] : [])].join(' · ');
  const height = BOX.pad * 2 + BOX.line * Math.max(asked.length + 1, note.length);
  const middle = y + height / 2;
  const svg = [
    `<g id="question-${question.id}">`,
    `<line class="way${condition ? ' maybe' : ''}" x1="${LEFT - 20}" y1="${middle}" x2="${LEFT}" y2="${middle}"/>`,
    `<rect class="box${condition ? ' maybe' : ''}" x="${LEFT}" y="${y}" width="${BOX.width}" height="${height}" rx="4"/>`,
    textBlock(asked, LEFT + BOX.pad, y + BOX.pad + 12, BOX.line),
    `<text class="id" x="${LEFT + BOX.pad}" y="${y + BOX.pad + 12 + asked.length * BOX.line}">${escaped(marks)}</text>`,
    textBlock(note, NOTE.left, y + BOX.pad + 12, BOX.line),
    '</g>',
  ].join('');
  return { svg, height };
}

/** Questions by id, which is short and stands in every box; values by the words on their button. */
function namingFrom(flow: Flow, words: FlowWords): Naming {
  const questions = new Map(questionsOf(flow).map((question) => [question.id, question]));
  return {
    question: (id) => id,
    value: (id, value) => {
      const question = questions.get(id);
      const table =
        question && 'options' in question && 'table' in question.options ? question.options.table : undefined;
      const keys = [
        `question.${id}.option.${value}`,
        `question.${id}.region.${value}`,
        ...choiceKeys(question, value),
        `${TABLE_WORDS[table ?? ''] ?? ''}.${value}`,
      ];
      const key = keys.find((each) => words.has(each));
      return key ? words.say(key) : String(value);
    },
  };
}

/** A choice that several properties offer is called alike by all: the first one's words do. */
const choiceKeys = (question: Question | undefined, value: string | number | boolean): readonly string[] =>
  question?.kind === 'against-today'
    ? question.properties.map(({ id }) => `question.${question.id}.property.${id}.choice.${value}`)
    : [];

const TABLE_WORDS: Readonly<Record<string, string>> = {
  activities: 'activity',
  floors: 'floor',
  'shoe-kinds': 'shoe-kind',
};

const say = (words: FlowWords, key: string, otherwise: string): string => (words.has(key) ? words.say(key) : otherwise);
