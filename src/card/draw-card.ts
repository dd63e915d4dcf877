import type { Words } from '../words/words.ts';
import type { CardFacts } from './card.ts';
import { type FontBytes, measureOf } from './font/metrics.ts';
import { layoutCard } from './layout/layout-card.ts';
import { pdfOf } from './pdf.ts';
import { NO_PICTURES } from './pictures.ts';
import type { Template } from './template.ts';
import { textOf } from './text/text-of.ts';

export interface DrawnCard {
  readonly pdf: Uint8Array;
  /** Characters the printing font lacks; each was replaced visibly. */
  readonly missing: readonly string[];
}

/**
 * A card as a PDF file: words, then places, then ink. Same facts, words, template, fonts and drawings: same bytes.
 *
 * Throws for a language from right to left, which it would draw wrongly: such a card is printed from its reading copy.
 */
export async function drawCard(
  facts: CardFacts,
  words: Words,
  template: Template,
  fonts: FontBytes,
  pictures = NO_PICTURES,
): Promise<DrawnCard> {
  if (words.direction === 'rtl') throw new Error(`A card in “${words.language}” is printed from its reading copy`);
  const text = textOf(facts, words, pictures);
  const sheets = layoutCard(text, template, measureOf(fonts));
  const info = { title: `${text.head.shop} · ${text.head.ticket}`, language: words.language, date: facts.date };
  return { pdf: await pdfOf(sheets, fonts, info), missing: sheets.missing };
}
