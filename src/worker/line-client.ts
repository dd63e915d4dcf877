import { type Remote, wrap } from 'comlink';
import type { LineService } from './line-service.ts';

export type LineClient = Remote<LineService>;

let client: LineClient | undefined;

/** The one worker of this page, started when first asked for. Comlink carries the calls: kept by the Chrome team for this. */
export function lineClient(): LineClient {
  client ??= wrap<LineService>(new Worker(new URL('./line-worker.ts', import.meta.url), { type: 'module' }));
  return client;
}
