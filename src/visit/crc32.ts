/** The reversed polynomial of CRC-32 as in RFC 1952 (gzip), section 8. */
const POLYNOMIAL = 0xedb88320;

/**
 * The check number of some bytes: a change to any of them almost surely changes it (by chance one in 4 thousand
 * million damages passes).
 *
 * @example
 * ```ts
 * crc32([0x31, 0x32, 0x33, 0x34, 0x35, 0x36, 0x37, 0x38, 0x39]) // 0xcbf43926, the check value printed for "123456789"
 * ```
 */
export function crc32(bytes: readonly number[]): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ POLYNOMIAL : crc >>> 1;
  }
  return ~crc >>> 0;
}
