// A spreadsheet runs a cell that starts like this, also in the full-width forms that some languages type.
const RISKY = /^'*[=+\-@\t＝＋－＠]/;
const GUARDED = /^'+[=+\-@\t＝＋－＠]/;

/**
 * Text as a spreadsheet will show and not run it: an apostrophe goes in front of what would be a formula. `unguarded` takes it off.
 *
 * @example
 * guarded('=SUM(A1)') // "'=SUM(A1)"
 * guarded('Marsh & Co') // 'Marsh & Co'
 */
export const guarded = (text: string): string => (RISKY.test(text) ? `'${text}` : text);

/**
 * The text that `guarded` was given.
 *
 * @example
 * unguarded("'=SUM(A1)") // '=SUM(A1)'
 */
export const unguarded = (text: string): string => (GUARDED.test(text) ? text.slice(1) : text);

export const looksLikeFormula = (text: string): boolean => /^[=@＝＠]/.test(text);
