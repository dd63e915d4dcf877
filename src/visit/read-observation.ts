import { INSOLE_RANGE, MEASURE_RANGES, TOE_PRINT_GAP_RANGE } from '../observation/measure-ranges.ts';
import {
  type Feet,
  type Foot,
  type FootMeasure,
  type Observation,
  type OldPair,
  ROLL_SEEN,
  type Roll,
} from '../observation/observation.ts';
import type { Path, Report } from './fault.ts';
import { group, millimetres, numberIn, oneOf, type Reader, text, truth } from './reader.ts';

const measure = (key: FootMeasure): Reader<number> => millimetres(...MEASURE_RANGES[key]);
const foot = group<Foot>(
  {
    length: measure('length'),
    ballLength: measure('ballLength'),
    ballGirth: measure('ballGirth'),
    width: measure('width'),
    heelWidth: measure('heelWidth'),
    instep: measure('instep'),
  },
  [],
);

const feet = group<Feet>(
  {
    left: foot,
    right: foot,
    posture: oneOf(['standing', 'seated', 'one-foot']),
    sock: oneOf(['worn-sock', 'thin-sock', 'barefoot']),
    time: oneOf(['morning', 'midday', 'late']),
    checked: truth,
  },
  ['posture', 'sock'],
);

type Measured = NonNullable<OldPair['measured']>;
/** Grams and millimetres of a single shoe; common practice, wide on purpose. */
const measuredShoe = group<Measured>(
  {
    mass: numberIn(50, 1500),
    'heel-stack': numberIn(0, 100),
    'forefoot-stack': numberIn(0, 100),
    drop: numberIn(-10, 40),
  },
  [],
);

/** Heel minus forefoot may differ from a drop measured by itself by so much, millimetres: two readings of one each. */
const DROP_SLACK = 2;

const measured: Reader<Measured> = (value, path, report) => {
  const read = measuredShoe(value, path, report);
  if (read === undefined) return undefined;
  const { drop, 'heel-stack': heel, 'forefoot-stack': forefoot } = read;
  if (drop !== undefined && heel !== undefined && drop > heel) {
    return contradiction(report, path, 'drop-above-stack', { drop, heel });
  }
  if (drop !== undefined && heel !== undefined && forefoot !== undefined) {
    if (Math.abs(heel - forefoot - drop) > DROP_SLACK) {
      return contradiction(report, path, 'drop-not-heel-minus-forefoot', { drop, heel, forefoot });
    }
  }
  return read;
};

const oldPair = group<OldPair>(
  {
    insoleLength: millimetres(...INSOLE_RANGE),
    toePrintGap: numberIn(...TOE_PRINT_GAP_RANGE),
    spill: oneOf(['none', 'inner', 'outer', 'both']),
    bulge: oneOf(['none', 'inner', 'outer']),
    heelLining: oneOf(['whole', 'worn', 'torn']),
    soleWear: oneOf(['even', 'outer-heel', 'inner-heel', 'forefoot', 'toe', 'worn-out']),
    measured,
  },
  [],
);

const roll = group<Roll>(
  { left: oneOf(ROLL_SEEN), right: oneOf(ROLL_SEEN), by: text, during: oneOf(['own-movement', 'walk']) },
  ['left', 'right', 'by', 'during'],
);

/** What the fitter saw, from outside. A figure that will not do is reported and left out; the rest stays. */
export const readObservation: Reader<Observation> = group<Observation>({ feet, oldPair, roll, note: text }, []);

/** Figures that cannot all be true are asked about, never averaged. */
function contradiction(report: Report, path: Path, code: string, data: Readonly<Record<string, number>>): undefined {
  report(path, { code, data });
  return undefined;
}
