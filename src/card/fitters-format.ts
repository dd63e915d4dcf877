/**
 * The format a fitter's copy is printed in: a full page, since it says more than a customer's card. Letter where the
 * shop prints its cards on Letter and so has that paper; A4 everywhere else, a shop with a roll included.
 *
 * @example
 * fittersFormat('letter') // 'letter'
 * fittersFormat('a5') // 'a4'
 */
export const fittersFormat = (cardFormat: string): 'a4' | 'letter' => (cardFormat === 'letter' ? 'letter' : 'a4');
