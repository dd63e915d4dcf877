import type { Reading } from '../../../units/result.ts';
import { plainText, typedNumber } from '../../../units/typed-number.ts';

/**
 * A comfort number as typed: 0 to 100, whole. An empty field is none and no finding.
 *
 * @example readComfort('72').value // 72
 */
export function readComfort(text: string): Reading<number> {
  const plain = plainText(text.slice(0, 40));
  if (plain === '') return { findings: [] };
  const value = typedNumber(plain);
  if (value === undefined || value > 100)
    return { findings: [{ code: 'comfort-unclear', severity: 'error', value: plain }] };
  return { value: Math.round(value), findings: [] };
}
