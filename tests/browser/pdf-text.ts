import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { allText, openPdf } from '../card/read-pdf.ts';

/** Text without its spaces: where a line breaks is the layout's business. */
export const plain = (text: string): string => text.replace(/[\s\u00ad]+/g, '');

/** What happens in between makes the browser save a card; its text, as an independent reader has it, without spaces. */
export async function savedCard(page: Page, save: () => Promise<void>): Promise<{ name: string; text: string }> {
  const waiting = page.waitForEvent('download');
  await save();
  const download = await waiting;
  const pdf = await openPdf(new Uint8Array(readFileSync(await download.path())));
  return { name: download.suggestedFilename(), text: plain(await allText(pdf)) };
}
