/** What a shop says of itself on a card. Read from the shop's file by `read-shop.ts`. */
export interface Shop {
  readonly name: string;
  /** Printed line by line. */
  readonly address: readonly string[];
  /** When it is open, in the shop's own words. */
  readonly openingLine?: string;
  /** A plain SVG drawing: no script, nothing fetched, nothing hidden. */
  readonly logo?: string;
  /** ISO 4217: `EUR`. */
  readonly currency: string;
  /** What the bench has for try-on tasks. */
  readonly kit: readonly string[];
  /** The fitters' language. */
  readonly language: string;
  /** Languages offered on the first screen. */
  readonly languages: readonly string[];
  /** What to dial in an emergency, where the shop is. */
  readonly emergencyNumber: string;
  /** A folder in `print-templates`. */
  readonly cardFormat: string;
  /** An invented shop for trying things out: every screen says so. */
  readonly demo?: boolean;
  /** Where the kiosk is served from; makes the printed code a link. */
  readonly origin?: string;
}

export const KIT = ['ramp', 'mat', 'rope', 'box', 'treadmill'] as const;
