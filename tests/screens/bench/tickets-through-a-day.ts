/** Prints the numbers of tickets begun at the moments given, in the time zone of this process. */
import { newTicket } from '../../../src/screens/fitter/bench-ticket.ts';
import { memoryStore } from '../../../src/storage/memory-store.ts';
import { visit } from './toy-visit.ts';

const store = memoryStore();
const numbers: number[] = [];
for (const moment of process.argv.slice(2)) numbers.push((await newTicket(store, visit, new Date(moment))).number);
process.stdout.write(JSON.stringify(numbers));
