/** The automatic checks, in the order in which they report. Add one here after writing its file; then raise the version. */
import type { Check } from './check.js';
import { ambientOutOfRange } from './list/ambient-out-of-range.js';
import { belowResolution } from './list/below-resolution.js';
import { beyondCapacity } from './list/beyond-capacity.js';
import { beyondTheFibre } from './list/beyond-the-fibre.js';
import { calibrationExpired } from './list/calibration-expired.js';
import { calibrationMissing } from './list/calibration-missing.js';
import { dateInTheFuture } from './list/date-in-the-future.js';
import { declaredInterest } from './list/declared-interest.js';
import { gripBreaks } from './list/grip-breaks.js';
import { identicalReadings } from './list/identical-readings.js';
import { instrumentNotNamed } from './list/instrument-not-named.js';
import { methodNotActive } from './list/method-not-active.js';
import { outlier } from './list/outlier.js';
import { readingsMissingForMethod } from './list/readings-missing-for-method.js';
import { retentionAboveWhole } from './list/retention-above-whole.js';
import { rigOutOfControl, rigWithoutEvidence } from './list/rig-evidence.js';
import { sameReadings } from './list/same-readings.js';
import { seenLabel } from './list/seen-label.js';
import { spreadTooWide } from './list/spread-too-wide.js';
import { terminalDigits } from './list/terminal-digits.js';
import { timeToBreak } from './list/time-to-break.js';
import { tooFewValidSpecimens } from './list/too-few-valid-specimens.js';
import { tracePeak } from './list/trace-peak.js';
import { unitSlip } from './list/unit-slip.js';

/** Goes up with every change of a check, its limit or the list; an edition pins it when it opens. */
export const CHECK_SET_VERSION = 2;

export const CHECKS: readonly Check[] = [
  readingsMissingForMethod,
  tooFewValidSpecimens,
  dateInTheFuture,
  methodNotActive,
  instrumentNotNamed,
  calibrationMissing,
  calibrationExpired,
  beyondCapacity,
  belowResolution,
  ambientOutOfRange,
  gripBreaks,
  timeToBreak,
  outlier,
  spreadTooWide,
  unitSlip,
  beyondTheFibre,
  retentionAboveWhole,
  identicalReadings,
  terminalDigits,
  sameReadings,
  tracePeak,
  rigOutOfControl,
  rigWithoutEvidence,
  declaredInterest,
  seenLabel,
];
