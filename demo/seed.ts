/** Any number would do; this one is kept so that `stock.csv` stays as it is. */
export const SEED = 20261125;
export const AS_OF = '2026-11-25T09:12';
