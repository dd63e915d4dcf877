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

/** A card as a PDF file: words, then places, then ink. Same facts, words, template, fonts and
 * drawings: same bytes. */
export async function drawCard(
  facts: CardFacts,
  words: Words,
  template: Template,
  fonts: FontBytes,
  pictures = NO_PICTURES,
): Promise<DrawnCard> {
  const text = textOf(facts, words, pictures);
  const sheets = layoutCard(text, template, measureOf(fonts));
  const info = { title: `${text.head.shop} · ${text.head.ticket}`, language: words.language, date: facts.date };
  return { pdf: await pdfOf(sheets, fonts, info), missing: sheets.missing };
}
