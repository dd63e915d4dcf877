import { z } from 'zod';

const strings = z.array(z.string());
const range = z.tuple([z.number(), z.number()]);

/** What a story may expect. A key that is not here is a slip of the pen, and refused. */
const EXPECTATION = z.strictObject({
  /** Questions on the route. */
  screens: z.int(),
  asked: strings,
  notAsked: strings,
  outcome: z.enum(['refer', 'fitter-first', 'other-footwear', 'keep-yours', 'shortlist']),
  otherFootwear: z.string().optional(),
  hold: z.enum(['none', 'skipped', 'measure-first', 'before-choosing', 'today', 'now']),
  /** Millimetres. */
  size: z.strictObject({ footLength: z.number(), innerLength: range }).optional(),
  /** The ideal range meets `touches`, ends no higher than `upTo`, begins no lower than `from`: what a fitter would say. */
  needs: z.array(
    z.strictObject({
      attribute: z.string(),
      touches: range.optional(),
      upTo: z.number().optional(),
      from: z.number().optional(),
    }),
  ),
  /** `attribute=value`. */
  musts: strings,
  /**
   * The first pair of a line-up: what it is sold for or must not be, the models a fitter would take, the properties
   * of which at least one is among its reasons, and those among its misgivings.
   */
  first: z.array(
    z.strictObject({
      line: z.string(),
      use: z.string().optional(),
      notUse: strings.optional(),
      shoes: strings.optional(),
      because: strings.optional(),
      misgiving: strings.optional(),
    }),
  ),
  cautions: strings,
  notCautions: strings,
  advice: strings.optional(),
});

export type Expectation = z.infer<typeof EXPECTATION>;
export const expectationOf = (value: unknown): Expectation => EXPECTATION.parse(value);
