import { describe, expect, it } from 'vitest';
import { attribute } from '../../src/attributes/table.ts';
import { COLUMNS } from '../../src/stock/columns.ts';
import { readStock } from '../../src/stock/read-csv.ts';
import { readList } from '../../src/stock/read-words.ts';

/** What an invented shop writes about its shoes, in its own language: closures, materials, colours. */
const WRITTEN = {
  en: ['Laces | hook and loop | zip', 'mesh; suede; wool', 'Black, navy, neon'],
  de: ['Schnürung | Klett | Reißverschluss', 'Netz; Wildleder; Filz', 'Schwarz, Blau, leuchtend'],
  fr: ['Lacets | scratch | glissière', 'filet; daim; laine', 'Noire, bleu marine, fluo'],
  es: ['Cordones | tira adherente | cremallera', 'malla; ante; lana', 'Negra, azul marino, flúor'],
  ar: ['أربطة | شريط لاصق | سحّاب', 'شبك؛ شمواه؛ صوف', 'أسود، كحلي، فاقع'],
} as const;
const HEADERS = {
  en: ['closure', 'materials', 'colour'],
  de: ['Verschluss', 'Obermaterial', 'Farbe'],
  fr: ['Fermeture', 'Matières', 'Couleur'],
  es: ['Cierre', 'Materiales', 'Color'],
  ar: ['الإغلاق', 'المواد', 'اللون'],
} as const;
const READ = [
  ['laces', 'strap', 'zip'],
  ['mesh', 'leather', 'wool'],
  ['black', 'blue', 'bright'],
];
const KEYS = ['closure', 'materials', 'colour'] as const;

describe.each(['en', 'de', 'fr', 'es', 'ar'] as const)('a list written in %s', (language) => {
  it('is read: closures, materials and colours', () => {
    for (const [at, key] of KEYS.entries()) {
      expect(readList(attribute(key), WRITTEN[language][at] ?? '')).toEqual({ items: READ[at], strange: [] });
    }
  });

  it('loads under its own names for these columns, with nothing refused or kept aside', () => {
    const cells = WRITTEN[language].map((cell) => `"${cell}"`);
    const { value, findings } = readStock(
      `shoe,model,shelf,box,eu,on hand,${HEADERS[language].join(',')}\na,Toy Adder,any,a1,42,1,${cells.join(',')}\n`,
      { asOf: '2026-11-25T09:12' },
    );
    expect(findings).toEqual([]);
    expect(KEYS.map((key) => value?.shoes[0]?.lists[key])).toEqual(READ);
  });
});

describe('the words of all languages together', () => {
  it.each(KEYS)('leave no doubt in “%s”: none stands for two things', (key) => {
    const words = attribute(key).items.flatMap(({ id, aliases }) => [id, ...aliases]);
    expect(words.filter((word, at) => words.indexOf(word) !== at)).toEqual([]);
    for (const word of words) expect(word).toBe(word.toLowerCase());
  });

  it('leave no doubt about columns: no name stands for two of them', () => {
    const names = COLUMNS.flatMap(({ header, aliases }) => [header, ...aliases]);
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });
});
