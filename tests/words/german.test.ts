import { describe, expect, it } from 'vitest';
import { sentencesIn, told } from './sentences.ts';

const sentences = sentencesIn('de');

describe('German', () => {
  it('speaks to customers as Sie', () => {
    const du = /\b(du|dich|dir|dein|deine|deinen|deinem|deiner|euch|euer|eure)\b/i;
    expect(told(sentences.filter(({ text }) => du.test(text)))).toEqual([]);
  });

  it('bids nobody as du', () => {
    const bid =
      /(^|[.!?:;,] |\b(und|oder) )(Probiere?|Frage?|Komm|Lass|Trage?|Schaue?|Nimm|Bringe?|Decke?|Geh|Höre?|Prüfe?|Achte|Kleb|Schnüre?|Lockere|Lege?|Sitze?|Wische?|Zeige?|Steig|Trab|Lauf|Mache?|Drehe?|Springe?|Miss|Drucke?|Tippe?|Gib|Lies|Schreibe?|Wähle?|Suche?|Sieh|Stelle?|Zieh|Nenne?|Tu|Öffne|Lade|Hole?|Sag|Setze?|Warte|Wechsle|Schone)\b(?! Sie)/;
    const seen = (text: string) => bid.test(text) && !/(Suche|Lage|Frage|Trage|Prüfe)\b$/.test(text);
    expect(told(sentences.filter(({ text }) => seen(text)))).toEqual([]);
    expect(['Geh auf und ab', 'Nass? Lass sie stehen.', 'Gehen Sie auf und ab'].map(seen)).toEqual([true, true, false]);
  });
});
