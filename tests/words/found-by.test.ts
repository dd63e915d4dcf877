import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { foundBy } from '../../src/words/found-by.ts';

const read = (file: string) => JSON.parse(readFileSync(new URL(`../../flows/${file}`, import.meta.url), 'utf8'));

test('foundBy: the beginning of a word counts before its middle, and spelling does not', () => {
  expect(foundBy('wandern', 'Wandern am Berg')).toBe(0);
  expect(foundBy('fussball', 'Fußball auf Rasen')).toBe(0);
  expect(foundBy('مشى', 'مشي سريع')).toBe(0);
  expect(foundBy('كــلب', 'كلب')).toBe(0);
  expect(foundBy('nis', 'Tennis')).toBe(1);
  expect(foundBy('zzz', 'Tennis')).toBeUndefined();
});

test('foundBy: every word typed is looked for, and a very short one is no beginning of another', () => {
  expect(foundBy('sports school', 'School sport, indoors pe sports')).toBe(0);
  expect(foundBy('school nis', 'School tennis')).toBe(1);
  expect(foundBy('school zzz', 'School sport')).toBeUndefined();
  expect(foundBy('PE', 'School sport pe')).toBe(0);
  expect(foundBy('pe', 'Road cycling pedal')).toBeUndefined();
  expect(foundBy('pe', 'Standing at work salesperson')).toBeUndefined();
  expect(foundBy('...', 'Tennis')).toBeUndefined();
});

/** What a customer may type, and what must be among the best found. Common words, invented for this test. */
const TYPED: Readonly<Record<string, readonly (readonly [typed: string, activity: string])[]>> = {
  en: [
    ['school sports', 'school-sport'],
    ['school', 'school-sport'],
    ['PE', 'school-sport'],
    ['gym class', 'school-sport'],
    ['dog', 'everyday-walking'],
    ['gravel', 'everyday-walking'],
    ['hike', 'hill-walking'],
    ['jog', 'road-running'],
    ['soccer', 'football-grass'],
    ['nurse', 'nursing'],
    ['bike', 'indoor-cycling'],
    ['weights', 'lifting'],
    ['ping', 'table-tennis'],
    ['chef', 'kitchen'],
    ['skater', 'skateboarding'],
    ['rower', 'rowing-machine'],
    ['hoops', 'basketball'],
    ['shuttlecock', 'badminton'],
    ['rebounder', 'mini-trampoline'],
    ['free running', 'parkour'],
    ['drummer', 'drumming'],
  ],
  de: [
    ['Schulsport', 'school-sport'],
    ['Sportunterricht', 'school-sport'],
    ['Turnen', 'school-sport'],
    ['Hund', 'everyday-walking'],
    ['spazieren', 'everyday-walking'],
    ['joggen', 'road-running'],
    ['Fussball', 'football-grass'],
    ['wandern', 'hill-walking'],
    ['Hantel', 'lifting'],
    ['Federball', 'badminton'],
    ['rudern', 'rowing-machine'],
    ['skaten', 'skateboarding'],
    ['Heimtrainer', 'indoor-cycling'],
    ['Nordic Walking', 'nordic-walking'],
    ['Spitzentanz', 'ballet-pointe'],
  ],
  fr: [
    ['EPS', 'school-sport'],
    ['sport scolaire', 'school-sport'],
    ['école', 'school-sport'],
    ['chien', 'everyday-walking'],
    ['randonnee', 'hill-walking'],
    ['foot', 'football-grass'],
    ['infirmiere', 'nursing'],
    ['ballet', 'ballet-pointe'],
    ['bâtons', 'nordic-walking'],
    ['skate', 'skateboarding'],
    ['ramer', 'rowing-machine'],
    ['volant', 'badminton'],
    ['panier', 'basketball'],
  ],
  es: [
    ['educación física', 'school-sport'],
    ['educacion fisica', 'school-sport'],
    ['escolar', 'school-sport'],
    ['perro', 'everyday-walking'],
    ['futbol', 'football-grass'],
    ['senderismo', 'hill-walking'],
    ['básquet', 'basketball'],
    ['remar', 'rowing-machine'],
    ['patineta', 'skateboarding'],
    ['danza', 'ballet-pointe'],
    ['vóley', 'volleyball'],
    ['cama elástica', 'mini-trampoline'],
  ],
  ar: [
    ['حصة الرياضة', 'school-sport'],
    ['مدرسة', 'school-sport'],
    ['كلب', 'everyday-walking'],
    ['ممرضه', 'nursing'],
    ['دراجه', 'indoor-cycling'],
    ['باسكت', 'basketball'],
    ['تجديف', 'rowing-machine'],
    ['سكيت', 'skateboarding'],
    ['باليه', 'ballet-pointe'],
    ['نطاطه', 'mini-trampoline'],
    ['فوتبول', 'football-grass'],
  ],
};

describe.each(Object.entries(TYPED))('somebody who types %s', (language, typed) => {
  const names: Readonly<Record<string, string>> = read(`fitting/words.${language}.json`).activity;
  const also: Readonly<Record<string, string>> = read(`words/${language}/search.json`).search;
  const found = (what: string) =>
    Object.entries(names)
      .map(([id, name]) => ({ id, rank: foundBy(what, `${name} ${also[id] ?? ''}`) }))
      .filter(({ rank }) => rank !== undefined)
      .sort((a, b) => Number(a.rank) - Number(b.rank));

  it.each(typed)('“%s” finds %s', (what, activity) => {
    expect(found(what).flatMap(({ id, rank }) => (rank === 0 ? [id] : []))).toContain(activity);
  });

  it('finds every activity by another name than its own, each language by words of its own', () => {
    expect(Object.keys(names).filter((id) => !also[id]?.trim())).toEqual([]);
  });

  it('keeps words for activities alone, and nothing that a name says already', () => {
    expect(Object.keys(also).filter((id) => !(id in names))).toEqual([]);
    const needless = Object.entries(also).flatMap(([id, words]) =>
      words
        .split(' ')
        .filter((word) => foundBy(word, names[id] ?? '') === 0)
        .map((word) => `${id}: ${word}`),
    );
    expect(needless).toEqual([]);
  });
});
