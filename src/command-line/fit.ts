/** The line without a screen. `npm run -s fit -- <command> …`; the commands are listed in README.md. */
import { run } from './run.ts';

// Whoever reads may stop early (`| head`); what is left is then for nobody.
process.stdout.on('error', (reason: NodeJS.ErrnoException) => process.exit(reason.code === 'EPIPE' ? 0 : 1));

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
});
