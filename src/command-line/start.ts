import { parseArgs } from 'node:util';
import { build, preview } from 'vite';

/** Vite's own port for built pages, unless another is asked for; where it is taken, the next free one. */
const { values } = parseArgs({ options: { port: { type: 'string', default: '4173' } } });

console.log('Building the kiosk. This takes some seconds.');
await build({ logLevel: 'warn' });
const server = await preview({ preview: { host: 'localhost', port: Number(values.port) } });
console.log(`
The kiosk of the demo shop, in which everything is invented, is at

  ${server.resolvedUrls?.local[0]}

Open it in a browser on this device. Ctrl+C stops it.`);
