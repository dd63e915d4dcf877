import type { CardFacts } from '../card.ts';

/** The words' key for who reads this copy: what is "yours" to the customer is not the fitter's. */
export const saidTo = ({ copy }: Pick<CardFacts, 'copy'>, key: string): string =>
  copy === 'fitter' ? `${key}-fitter` : key;
