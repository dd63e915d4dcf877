import { BOX_WIDTHS, type Box } from '../stock/shoe.ts';
import { judgeBox, type SizedShoe } from './judge-box.ts';

/** Boxes whose inner lengths lie closer than this are one size, millimetres: a foot is read to a millimetre. */
const SAME_SIZE = 1;

/**
 * The box to fetch when one on the feet proved too small or too big: the nearest longer or shorter one of the model on
 * hand and not reserved; of several alike the one of the same width. No answer when there is none, or when the box
 * tried has nothing on it to judge by.
 *
 * @example nextBox([eu 41, eu 42, eu 43], shoe, eu 42, 'longer') // eu 43
 */
export function nextBox(
  boxes: readonly Box[],
  shoe: SizedShoe,
  tried: Box,
  which: 'longer' | 'shorter',
): Box | undefined {
  const from = judgeBox(tried, shoe)?.inner;
  if (from === undefined) return undefined;
  const sign = which === 'longer' ? 1 : -1;
  const widthOff = ({ width }: Box) =>
    Math.abs(BOX_WIDTHS.indexOf(width ?? 'standard') - BOX_WIDTHS.indexOf(tried.width ?? 'standard'));
  const beyond = boxes
    .filter(({ id, onHand, reserved }) => id !== tried.id && onHand > reserved)
    .flatMap((box) => {
      const inner = judgeBox(box, shoe)?.inner;
      const step = inner === undefined ? 0 : sign * (inner - from);
      return step > SAME_SIZE ? [{ box, step }] : [];
    });
  const least = Math.min(...beyond.map(({ step }) => step));
  return beyond
    .filter(({ step }) => step - least <= SAME_SIZE)
    .sort((a, b) => widthOff(a.box) - widthOff(b.box) || a.step - b.step || (a.box.id < b.box.id ? -1 : 1))[0]?.box;
}
