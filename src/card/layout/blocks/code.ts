import { encodeQR } from 'qr';
import type { CodeMark } from '../mark.ts';
import { type Piece, piece } from '../piece.ts';

/** Light border round a code, in its own small squares (ISO/IEC 18004). */
export const QUIET = 4;

/**
 * The card code as a QR code at level M, quiet zone included. Its small squares are `wanted` millimetres, less where
 * there is no room, but never under `least`.
 *
 * @example
 * codePiece('LW1', 40, { module: 0.6, least: 0.5 }).height // 17.4: 21 squares and 4 of border each side, 0.6 mm
 */
export function codePiece(
  text: string,
  room: number,
  size: { readonly module: number; readonly least: number },
): Piece {
  // The encoder insists on a border of its own; the quiet zone here is paper, so that is taken off.
  const rows = encodeQR(text, 'raw', { ecc: 'medium', border: 1 })
    .slice(1, -1)
    .map((row) => row.slice(1, -1));
  const across = rows.length + 2 * QUIET;
  const module = Math.max(size.least, Math.min(size.module, room / across));
  const side = across * module;
  const mark: CodeMark = { kind: 'code', x: QUIET * module, y: QUIET * module, module, rows };
  return piece(side, [{ kind: 'box', x: 0, y: 0, width: side, height: side, fill: 'paper' }, mark]);
}
