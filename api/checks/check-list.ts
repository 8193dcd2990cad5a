/** The automatic checks, in the order in which they report. Add one here after writing its file; then raise the version. */
import type { Check } from './check.js';
import { ambientOutOfRange } from './list/ambient-out-of-range.js';
import { beforeItsTime } from './list/before-its-time.js';
import { beforeTheEdition } from './list/before-the-edition.js';
import { belowResolution } from './list/below-resolution.js';
import { beyondCapacity } from './list/beyond-capacity.js';
import { beyondTheFibre } from './list/beyond-the-fibre.js';
import { calibrationExpired } from './list/calibration-expired.js';
import { calibrationMissing } from './list/calibration-missing.js';
import { dateInTheFuture } from './list/date-in-the-future.js';
import { declaredInterest } from './list/declared-interest.js';
import { driftInOrder } from './list/drift-in-order.js';
import { farFromLabel } from './list/far-from-label.js';
import { fewerExplained } from './list/fewer-explained.js';
import { gripBreaks } from './list/grip-breaks.js';
import { handedInLate } from './list/handed-in-late.js';
import { identicalReadings } from './list/identical-readings.js';
import { implausibleStress } from './list/implausible-stress.js';
import { instrumentNotNamed } from './list/instrument-not-named.js';
import { labelAgainstItself } from './list/label-against-itself.js';
import { manyHandIns } from './list/many-hand-ins.js';
import { manyPreviews } from './list/many-previews.js';
import { manyInvalid } from './list/many-invalid.js';
import { methodNotActive } from './list/method-not-active.js';
import { mixedUnits } from './list/mixed-units.js';
import { notBlind } from './list/not-blind.js';
import { numbersMissing } from './list/numbers-missing.js';
import { outlier } from './list/outlier.js';
import { readingsMissingForMethod } from './list/readings-missing-for-method.js';
import { resolutionTooCoarse } from './list/resolution-too-coarse.js';
import { retentionAboveWhole } from './list/retention-above-whole.js';
import { rigLearning } from './list/rig-learning.js';
import { rigOutOfControl } from './list/rig-out-of-control.js';
import { rigWithoutEvidence } from './list/rig-without-evidence.js';
import { sameHandsAgain } from './list/same-hands-again.js';
import { sameReadings } from './list/same-readings.js';
import { seenLabel } from './list/seen-label.js';
import { severalInstruments } from './list/several-instruments.js';
import { spreadTooWide } from './list/spread-too-wide.js';
import { terminalDigits } from './list/terminal-digits.js';
import { timeNotRead } from './list/time-not-read.js';
import { timeToBreak } from './list/time-to-break.js';
import { tooFewValidSpecimens } from './list/too-few-valid-specimens.js';
import { tracePeak } from './list/trace-peak.js';
import { unlikeOwnDays } from './list/unlike-own-days.js';
import { unitSlip } from './list/unit-slip.js';

/** Goes up with every change of a check, its limit or the list; an edition pins it when it opens. */
export const CHECK_SET_VERSION = 5;

export const CHECKS: readonly Check[] = [
  readingsMissingForMethod,
  tooFewValidSpecimens,
  fewerExplained,
  manyInvalid,
  numbersMissing,
  dateInTheFuture,
  handedInLate,
  beforeTheEdition,
  beforeItsTime,
  methodNotActive,
  instrumentNotNamed,
  severalInstruments,
  calibrationMissing,
  calibrationExpired,
  beyondCapacity,
  belowResolution,
  resolutionTooCoarse,
  mixedUnits,
  ambientOutOfRange,
  gripBreaks,
  timeToBreak,
  timeNotRead,
  outlier,
  spreadTooWide,
  driftInOrder,
  unitSlip,
  unlikeOwnDays,
  implausibleStress,
  farFromLabel,
  beyondTheFibre,
  retentionAboveWhole,
  identicalReadings,
  terminalDigits,
  sameReadings,
  tracePeak,
  rigOutOfControl,
  rigWithoutEvidence,
  rigLearning,
  declaredInterest,
  seenLabel,
  notBlind,
  manyHandIns,
  manyPreviews,
  sameHandsAgain,
  labelAgainstItself,
];
