import {
  type Feet,
  FOOT_MEASURES,
  type Foot,
  type FootMeasure,
  type Observation,
  type OldPair,
} from '../../../observation/observation.ts';

export type Side = 'left' | 'right';
type Shoe = NonNullable<OldPair['measured']>;
/** How feet are measured unless somebody says otherwise: as ISO 9407 does, in the sock to be worn. */
export const USUAL: Feet = { posture: 'standing', sock: 'worn-sock' };

/**
 * The observation with one measure of one foot, or without it. Another length takes back that feet were checked: it was
 * said of the lengths before.
 *
 * @example withFoot({}, 'left', 'length', 265).feet // { left: { length: 265 }, posture: 'standing', sock: 'worn-sock' }
 */
export function withFoot(
  observation: Observation,
  side: Side,
  measure: FootMeasure,
  value: number | undefined,
): Observation {
  const { checked, ...feet } = observation.feet ?? USUAL;
  const foot = set(feet[side] ?? {}, measure, value) as Foot;
  const kept = measure === 'length' || checked === undefined ? {} : { checked };
  const { [side]: _before, ...rest } = feet;
  const some = FOOT_MEASURES.some((each) => foot[each] !== undefined);
  return { ...observation, feet: { ...rest, ...kept, ...(some ? { [side]: foot } : {}) } };
}

/** The observation with another posture, sock or time of day, or with feet that were measured again. */
export function withFeet<K extends 'posture' | 'sock' | 'time' | 'checked'>(
  observation: Observation,
  key: K,
  value: Feet[K] | undefined,
): Observation {
  return { ...observation, feet: set(observation.feet ?? USUAL, key, value) as Feet };
}

/** The observation with one thing seen on the old pair, or without it. */
export function withOldPair<K extends Exclude<keyof OldPair, 'measured'>>(
  observation: Observation,
  key: K,
  value: OldPair[K] | undefined,
): Observation {
  return oldPair(observation, set(observation.oldPair ?? {}, key, value));
}

/** The observation with one figure measured on the shoe worn today, or without it. */
export function withShoe(observation: Observation, key: keyof Shoe, value: number | undefined): Observation {
  const { measured, ...rest } = observation.oldPair ?? {};
  const shoe = set(measured ?? {}, key, value);
  return oldPair(observation, { ...rest, ...(Object.keys(shoe).length > 0 ? { measured: shoe } : {}) });
}

/** An old pair of which nothing is noted is no old pair. */
function oldPair(observation: Observation, pair: OldPair): Observation {
  const { oldPair: _before, ...rest } = observation;
  return Object.keys(pair).length > 0 ? { ...rest, oldPair: pair } : rest;
}

/** A copy with the key set, or left out where there is no value. */
function set<T extends object, K extends keyof T>(of: T, key: K, value: T[K] | undefined): T {
  const { [key]: _before, ...rest } = of;
  return (value === undefined ? rest : { ...rest, [key]: value }) as T;
}
