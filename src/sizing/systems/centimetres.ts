import { nearest } from '../../units/round.ts';
import { tidy } from '../../units/tidy.ts';
import { plainText, typedNumber } from '../../units/typed-number.ts';
import { MONDOPOINT_RANGE } from './mondopoint.ts';
import { made, type SizeSystem } from './size-system.ts';

/**
 * Centimetres on a box: foot length, whole and half centimetres; ties up.
 *
 * A caution from ISO/TS 19407: some shoes marked in centimetres carry the length of the last, not of the foot.
 * `fitBox` looks out for that.
 *
 * @example centimetres.parse('26,5 cm') // 26.5
 * @example centimetres.size(263) // 26.5
 */
export const centimetres: SizeSystem = {
  parse(text) {
    const number = typedNumber(
      plainText(text)
        .replace(/^(?:cm|jp) ?/i, '')
        .replace(/ ?cm$/i, ''),
    );
    if (number === undefined || made(number * 10, ...MONDOPOINT_RANGE) === undefined) return undefined;
    return Number.isInteger(tidy(number * 10)) ? number : undefined;
  },
  print: String,
  foot: (size) => tidy(size * 10),
  exact: (foot) => foot / 10,
  size: (foot) => made(nearest(foot / 10, 0.5), MONDOPOINT_RANGE[0] / 10, MONDOPOINT_RANGE[1] / 10),
};
