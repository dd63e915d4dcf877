import type words from '../../flows/words/en/visit.json';
import type { KeyOf } from '../words/keys.ts';

/** Codes of findings that this room has words for: one that has none does not compile. */
export type FindingCode = KeyOf<(typeof words)['finding']>;
