import { type Mark, POINT } from '../mark.ts';
import { type Pen, textMark } from '../pen.ts';

/** A pair's letter in a filled disc. `x` and `y` are the middle. */
export function letterDisc(pen: Pen, letter: string, x: number, y: number, r: number): readonly Mark[] {
  // Nine points at least; a capital is about two thirds of the type size high.
  const size = Math.max(9, (r * 1.25) / POINT);
  return [
    { kind: 'disc', x, y, r, fill: 'ink' },
    textMark(pen, letter, x - r, y + size * POINT * 0.334, { size, bold: true, ink: 'paper', align: 'middle' }, 2 * r),
  ];
}
