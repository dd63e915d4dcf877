/**
 * Bytes as text that may stand in an address: RFC 4648, section 5, without padding. Written out here because the
 * line runs in the browser and on the command line, and what both share has no such function yet.
 */
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** @example toBase64url([0xfb, 0xff]) // '-_8' */
export function toBase64url(bytes: readonly number[]): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 3) {
    const taken = bytes.slice(at, at + 3);
    const [a = 0, b = 0, c = 0] = taken;
    const block = a * 65536 + b * 256 + c;
    for (let place = 0; place <= taken.length; place += 1) text += LETTERS[(block >> (18 - 6 * place)) & 63];
  }
  return text;
}

/** Nothing for text that could not have been written so. */
export function fromBase64url(text: string): readonly number[] | undefined {
  const bytes: number[] = [];
  let held = 0;
  let bits = 0;
  for (const letter of text) {
    const value = LETTERS.indexOf(letter);
    if (value < 0) return undefined;
    held = ((held << 6) | value) & 0xffff;
    bits += 6;
    if (bits >= 8) {
      bits -= 8;
      bytes.push((held >> bits) & 255);
    }
  }
  const left = held & ((1 << bits) - 1);
  return bits < 6 && left === 0 ? bytes : undefined;
}
