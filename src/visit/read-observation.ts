import { checkObservation } from '../observation/check-observation.ts';
import type { Observation, OldPair } from '../observation/observation.ts';
import type { Path, Report } from './fault.ts';
import type { Reader } from './reader.ts';

/** What the fitter saw, from outside. A figure that will not do is reported and left out; the rest stays. */
export const readObservation: Reader<Observation> = (value, path, report) => {
  const { value: read, findings } = checkObservation(value);
  for (const { code, severity, at, value, data } of findings) {
    const place = at === undefined || at === 'observation' ? path : [...path, ...at.split('.')];
    report(place, {
      code,
      ...(value !== undefined && { value }),
      ...(data && { data }),
      ...(severity === 'note' && { note: true }),
    });
  }
  const measured = read?.oldPair?.measured;
  if (read === undefined || measured === undefined || agree(measured, [...path, 'oldPair', 'measured'], report)) {
    return read;
  }
  const { measured: _contradicts, ...oldPair } = read.oldPair ?? {};
  return { ...read, oldPair };
};

/** Heel minus forefoot may differ from a drop measured by itself by so much, millimetres: as in the stock list. */
const DROP_SLACK = 2;

/** Figures that cannot all be true are asked about, never averaged. */
function agree(
  { drop, 'heel-stack': heel, 'forefoot-stack': forefoot }: NonNullable<OldPair['measured']>,
  path: Path,
  report: Report,
): boolean {
  if (drop === undefined || heel === undefined) return true;
  if (drop > heel) {
    report(path, { code: 'drop-above-stack', data: { drop, heel } });
    return false;
  }
  if (forefoot !== undefined && Math.abs(heel - forefoot - drop) > DROP_SLACK) {
    report(path, { code: 'drop-not-heel-minus-forefoot', data: { drop, heel, forefoot } });
    return false;
  }
  return true;
}
