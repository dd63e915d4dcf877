import { lineClient } from '../../../src/worker/line-client.ts';
import type { CardOrder } from '../../../src/worker/line-service.ts';

/** Draws a card in the kiosk's own worker, for a test to compare: the PDF as base64. */
async function cardInWorker(stock: string, asOf: string, order: CardOrder): Promise<string> {
  const service = lineClient();
  await service.offerStock(new Blob([stock]) as File, asOf);
  await service.swapStock();
  const pdf = await service.pdf(order);
  return btoa(Array.from(pdf, (byte) => String.fromCharCode(byte)).join(''));
}
Object.assign(window, { cardInWorker });
