import type { ContentFile } from '../../../src/flow/check/document.ts';

/** An invented flow folder with nothing wrong with it, for planting one fault at a time. Every figure in it is made up. */
const LOADS = [
  'impact',
  'forefoot-landing',
  'rearfoot-landing',
  'bounce',
  'side-to-side',
  'twisting',
  'forward-push',
  'squat',
  'time-on-feet',
  'pedals',
  'roughness',
  'toe-drag',
];
const backing = { source: 'gull-1901', grade: 'weak', known: 'read' };
const rows = (list: readonly object[]): string => `[\n${list.map((row) => JSON.stringify(row)).join(',\n')}\n]\n`;

export const TOY_FILES: Readonly<Record<string, string>> = {
  'sources.json': rows([
    {
      id: 'gull-1901',
      authors: 'Invented',
      year: 1901,
      title: 'Gulls and kites',
      where: 'Nowhere',
      kind: 'leaflet',
      found: 'Gulls like kites.',
      grade: 'weak',
      known: 'read',
    },
  ]),
  'toy/flow.json': `{
  "id": "toy", "version": 1, "languages": ["en", "de"],
  "bounds": {
    "longest": 4,
    "shortWays": [{ "id": "quick", "when": { "of": "weather", "is": "sun" }, "screens": 3 }],
    "typical": { "story": "ann", "screens": 4 }
  },
  "sections": [
    { "id": "sky", "questions": [
      { "id": "weather", "kind": "one-of", "options": [
        { "id": "sun" },
        { "id": "rain" }
      ] },
      { "id": "play", "kind": "one-of", "options": { "table": "activities" } },
      { "id": "umbrella", "kind": "yes-no", "askWhen": { "of": "weather", "is": "rain" } },
      { "id": "basket", "kind": "some-of", "options": [
        { "id": "cake" },
        { "id": "soup", "showWhen": { "of": "umbrella", "is": "yes" } },
        { "id": "none", "alone": true }
      ] }
    ] }
  ]
}
`,
  'toy/activities.json': rows([
    {
      id: 'kite-flying',
      group: 'sky',
      loads: Object.fromEntries(LOADS.map((load) => [load, { value: 0.5, ...backing }])),
      toeRoom: { range: [10, 15], ...backing },
      unit: 'hours',
      tasks: ['stroll'],
      floors: ['moss'],
    },
  ]),
  'toy/floors.json': rows([
    {
      id: 'moss',
      group: 'outdoor',
      hardness: { range: [0, 0.1], ...backing },
      grip: { range: [0, 0.5], ...backing },
      lugs: { range: [2, 4], ...backing },
      roughness: { value: 0.2, ...backing },
    },
  ]),
  'toy/shoe-kinds.json': rows([{ id: 'clogs', group: 'wood', usual: { drop: [0, 4] }, ...backing }]),
  'toy/rules.json': rows([
    {
      id: 'cake-soft',
      basis: 'liking',
      topic: 'cake',
      when: { of: 'basket', includes: 'cake' },
      asks: [{ attribute: 'drop', ideal: [4, 8], limits: [0, 12], weight: 0.5, per: 'load-bounce' }],
      ...backing,
    },
    {
      id: 'soup-dry',
      basis: 'place',
      topic: 'soup',
      when: { of: 'basket', includes: 'soup' },
      musts: [{ attribute: 'waterproof', value: true }],
      cautions: ['spills'],
      advice: ['lid'],
      source: 'common-practice',
      grade: 'common-practice',
      known: 'read',
    },
  ]),
  'toy/cautions.json': rows([{ id: 'spills', level: 'mind', whom: 'cook', ...backing }]),
  'toy/advice.json': rows([{ id: 'lid', kind: 'habit', ...backing }]),
  'toy/words.en.json': words('en'),
  'toy/words.de.json': words('de'),
  'toy/knowledge.en.json': knowledge('en'),
  'toy/knowledge.de.json': knowledge('de'),
  'toy/stories/ann.json': '{ "answers": { "weather": "sun", "play": "kite-flying", "basket": ["cake"] } }\n',
  'words/en/sky.json': '{ "sky": { "blue": "Blue, {{shade}}" } }\n',
  'words/de/sky.json': '{ "sky": { "blue": "Blau, {{shade}}" } }\n',
};

function words(language: string): string {
  const say = (text: string) => `${text} (${language})`;
  const question = (...options: readonly string[]) => ({
    ask: say('Which?'),
    why: say('To know.'),
    ...(options.length > 0 && { option: Object.fromEntries(options.map((id) => [id, say(id)])) }),
  });
  const all = {
    section: { sky: say('Sky') },
    question: {
      weather: question('sun', 'rain'),
      play: question(),
      umbrella: question(),
      basket: question('cake', 'soup', 'none'),
    },
    activity: { 'kite-flying': say('Kites') },
    'activity-group': { sky: say('Sky') },
    floor: { moss: say('Moss') },
    'floor-group': { outdoor: say('Out') },
    'shoe-kind': { clogs: say('Clogs') },
    'shoe-kind-group': { wood: say('Wood') },
    unit: { hours: say('hours') },
  };
  return `${JSON.stringify(all, null, 2)}\n`;
}

function knowledge(language: string): string {
  const say = (text: string) => `${text} (${language})`;
  const all = {
    caution: { spills: { text: say('Mind the soup.') } },
    whom: { cook: say('a cook') },
    advice: { lid: { text: say('Take a lid.') } },
    rule: { 'cake-soft': { why: say('Cake is soft.') }, 'soup-dry': { why: say('Soup is wet.') } },
    source: { 'gull-1901': { found: say('Gulls like kites.') } },
    task: { stroll: { name: say('Stroll'), feel: say('Light?') } },
  };
  return `${JSON.stringify(all, null, 2)}\n`;
}

export const filesOf = (texts: Readonly<Record<string, string>>): readonly ContentFile[] =>
  Object.entries(texts).map(([path, text]) => ({ path, text }));
