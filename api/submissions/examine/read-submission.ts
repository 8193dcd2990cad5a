import type { InstrumentOnRecord } from '../../instruments/instruments.read-model.js';
import { MeasurementError } from '../../measurement/errors.js';
import { parseQuantity } from '../../measurement/units/parse-quantity.js';
import type { InputFault } from '../../platform/errors/problem.js';
import { contentDigest } from './content-digest.js';
import type { ReadSubmission } from './examined-submission.js';
import type { HandIn } from '../intake/intake.js';
import { readingsDigest } from '../../readings/readings-digest.js';
import { toSpecimensInSi } from '../../readings/readings-si.js';
import { instrumentFaults, isFound, retiredSpoolFaults, strangersToEdition, unknownNames } from './subject.js';
import type { SoughtSubject } from './subject.js';
import { computeSubmissionFigures } from '../../readings/submission-figures.js';

/** Puts what was handed in beside what is on record and computes its figures; or tells every fault. */
export function readSubmission(
  testerId: string,
  handIn: HandIn,
  sought: SoughtSubject,
  onRecord: readonly InstrumentOnRecord[],
): ReadSubmission | InputFault[] {
  const { content } = handIn;
  const instruments = onRecord.filter(({ code }) => content.instruments.includes(code));
  const faults = [
    ...unknownNames(content, sought),
    ...strangersToEdition(sought),
    ...retiredSpoolFaults(content.benchDay, sought.spool),
    ...instrumentFaults(content, instruments),
  ];
  if (faults.length > 0 || !isFound(sought)) return faults;
  try {
    const specimens = toSpecimensInSi(content.specimens);
    const { temperature } = content.ambient;
    const read = {
      ...handIn,
      subject: sought,
      instruments,
      temperatureC: parseQuantity(temperature.value, temperature.unit).si,
      specimens,
      figures: computeSubmissionFigures(specimens, sought.method.parameters.areaFrom, sought.spool.variant.densityGPerCm3),
      readingsDigest: readingsDigest(specimens),
    };
    return { ...read, contentDigest: contentDigest(testerId, read) };
  } catch (error) {
    if (error instanceof MeasurementError) return [{ pointer: '/specimens', code: error.code, detail: error.inWords }];
    throw error;
  }
}
