import type { Bench, BenchTried, CardFacts, CardPair } from '../card/card.ts';
import { measureOf } from '../card/font/metrics.ts';
import { layoutCard, type Page } from '../card/layout/layout-card.ts';
import { extent } from '../card/layout/mark.ts';
import { NoRoom } from '../card/layout/wrap.ts';
import { readShop } from '../card/read-shop.ts';
import type { Template } from '../card/template.ts';
import { textOf } from '../card/text/text-of.ts';
import type { Words } from '../words/words.ts';
import { readText } from './files.ts';
import { fontsOnDisk } from './fonts-on-disk.ts';
import { loadKnowledge } from './load.ts';
import { picturesOnDisk } from './pictures-on-disk.ts';
import { DEMO_SHOP } from './places.ts';
import { wordsOnDisk } from './words-on-disk.ts';

/** Millimetres by which rounding may put a mark over the margin. */
const SLACK = 0.05;

/** What a template's page has no room for: words that run over its margins (or the kind of mark), and words it cuts. */
export interface NoRoomFor {
  readonly over: readonly string[];
  readonly cut: readonly string[];
}

/** A template that is wrong is wrong in many words; so many of either kind show what is meant. Our choice. */
const SHOWN = 3;

/**
 * What of a trial card has no room on a template's page. The trial card says what every card must: all cautions there
 * are, one invented pair with an ease-in, a code of the usual length. The fitter's copy of it also has a record of the
 * bench.
 */
export function offThePage(template: Template): NoRoomFor {
  const { words, facts } = trial();
  const copies: readonly CardFacts[] = [facts, { ...facts, copy: 'fitter', bench: BENCH }];
  try {
    const pages = copies.flatMap(
      (each) => layoutCard(textOf(each, words, picturesOnDisk()), template, measureOf(fontsOnDisk())).pages,
    );
    const marks = pages.flatMap((page) => page.marks);
    return {
      over: few(pages.flatMap((page) => over(page, template))),
      cut: few(marks.flatMap((mark) => (mark.kind === 'text' && mark.cut !== undefined ? [mark.cut] : []))),
    };
  } catch (reason) {
    if (reason instanceof NoRoom) return { over: [reason.words], cut: [] };
    throw reason;
  }
}

const few = (words: readonly string[]): readonly string[] => [...new Set(words)].slice(0, SHOWN);

function over({ width, height, marks }: Page, { margins }: Template): readonly string[] {
  return marks.flatMap((mark) => {
    const { left, right, top, bottom } = extent(mark);
    const inside =
      left >= margins.left - SLACK &&
      right <= width - margins.right + SLACK &&
      top >= margins.top - SLACK &&
      bottom <= height - margins.bottom + SLACK;
    const betweenPages = mark.kind === 'line' && mark.stitched && mark.ink === 'rule';
    return inside || betweenPages ? [] : [mark.kind === 'text' ? mark.text : mark.kind];
  });
}

let made: { readonly words: Words; readonly facts: CardFacts } | undefined;
function trial() {
  made ??= { words: wordsOnDisk('de'), facts: trialFacts() };
  return made;
}

const PAIR: CardPair = {
  letter: 'A',
  shoe: 'trial',
  name: 'Trial pair',
  part: 'closest',
  lastPair: true,
  boxes: [{ labels: [{ system: 'eu', label: '42 2/3' }], place: 'C4' }],
  reasons: [],
  misgivings: [],
  unknown: [],
  easeIn: {
    triggers: ['lower-drop'],
    unit: 'sessions',
    weeks: [1, 2, 3, 4].map((week) => ({ week, share: week / 4 })),
  },
};

const TRIED: BenchTried = {
  name: PAIR.name,
  box: PAIR.boxes[0] ?? '',
  rank: 1,
  comfort: 70,
  size: 'right',
  notes: { 'lace-gap': 'even', heel: 'lifts-a-little', midfoot: 'presses', 'toe-room': 'right' },
  rubs: ['left-ankle-outer'],
};

/** Three pairs tried, as many as a line-up has. */
const BENCH: Bench = {
  decision: { kind: 'pair', name: TRIED.name, box: TRIED.box, second: TRIED.name },
  tried: [TRIED, TRIED, TRIED],
  feet: {
    left: { length: 262, ballGirth: 248.5 },
    right: { length: 265, ballGirth: 250.5 },
    posture: 'standing',
    sock: 'worn-sock',
  },
  changes: [],
  hold: 'none',
  needs: [],
  musts: [],
  unknown: [],
  sources: [],
};

function trialFacts(): CardFacts {
  const knowledge = loadKnowledge();
  const shop = readShop(readText(DEMO_SHOP), DEMO_SHOP).value;
  if (!shop) throw new Error('The demo shop file reads');
  const [activity] = knowledge.activities;
  return {
    copy: 'customer',
    outcome: 'shortlist',
    shop,
    date: '2026-11-25',
    ticket: 'maple 14',
    stockAsOf: '2026-11-25T09:12:00',
    // As long as a full visit's code behind an address: 57 squares across.
    code: `https://kiosk.example/#${'Ab1_'.repeat(50)}`,
    ...(activity ? { doing: { activity: activity.id, group: activity.group } } : {}),
    lineUps: [{ for: 'all', sureness: 'none', pairs: [PAIR], ifDropped: [] }],
    strips: [],
    tasks: { gentle: ['walk'], moving: [], needsFitter: false },
    musts: [],
    justSize: false,
    todayMeasured: false,
    cautions: knowledge.cautions.map(({ id, level }) => ({ code: id, level })),
    advice: [],
    healthAsked: false,
    healthNotes: false,
  };
}
