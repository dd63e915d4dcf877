/** Writes whole numbers into as many bits as each needs, most significant first. */
export class BitWriter {
  readonly #bits: boolean[] = [];

  /** `value` from 0 to 2^width - 1; `width` up to 32. */
  write(value: number, width: number): void {
    if (!Number.isInteger(value) || value < 0 || value >= 2 ** width)
      throw new RangeError(`${value} needs more than ${width} bits`);
    for (let at = width - 1; at >= 0; at -= 1) this.#bits.push(Math.floor(value / 2 ** at) % 2 === 1);
  }

  flag(value: boolean): void {
    this.#bits.push(value);
  }

  /** The bits so far, filled up with zeros to whole bytes. */
  bytes(): readonly number[] {
    const bytes = new Array<number>(Math.ceil(this.#bits.length / 8)).fill(0);
    this.#bits.forEach((bit, at) => {
      if (bit) bytes[at >> 3] = (bytes[at >> 3] ?? 0) | (0x80 >> (at & 7));
    });
    return bytes;
  }
}

/** Reads what a `BitWriter` wrote. Past the end it reads zeros and says so in `overrun`. */
export class BitReader {
  readonly #bytes: readonly number[];
  #at = 0;
  constructor(bytes: readonly number[]) {
    this.#bytes = bytes;
  }

  read(width: number): number {
    let value = 0;
    for (let step = 0; step < width; step += 1) value = value * 2 + (this.flag() ? 1 : 0);
    return value;
  }

  flag(): boolean {
    const byte = this.#bytes[this.#at >> 3] ?? 0;
    const bit = (byte & (0x80 >> (this.#at & 7))) !== 0;
    this.#at += 1;
    return bit;
  }

  get overrun(): boolean {
    return this.#at > this.#bytes.length * 8;
  }

  /** Everything was read but the zeros that fill the last byte. */
  get spent(): boolean {
    const left = this.#bytes.length * 8 - this.#at;
    return left >= 0 && left < 8 && this.read(left) === 0;
  }
}

/** Bits that hold any of `count` things. */
export const widthOf = (count: number): number => Math.ceil(Math.log2(Math.max(count, 1)));
