/** Controls, halves of letters, and marks that turn round the writing beside them. Joiners and plain direction marks are writing and stay. */
const HIDDEN = /(?![\t\n])[\p{Cc}\p{Cs}\u202A-\u202E\u2066-\u2069]/gu;

/**
 * Text without characters that show nothing and do something: on a screen, in a terminal, on a card.
 *
 * @example
 * withoutHidden('Marsh\u202E Heron') // 'Marsh Heron'
 */
export const withoutHidden = (text: string): string => text.replaceAll(HIDDEN, '');
