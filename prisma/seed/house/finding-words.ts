/** What a reviewer of the house writes to a held finding when nothing special is behind it: code of the check → words. */
const WORDS: Readonly<Record<string, string>> = {
  'readings/outlier':
    'Looked at on the bench sheet: nothing was noted on the specimen. One set in twenty shows as much by chance; it stays.',
  'tester/declared-interest':
    'The tester worked from the blind code, and a tester without a tie pulled the same spool on another rig with the same result.',
  'specimens/spread-too-wide': 'The spread is that of the line: the other rig shows it too.',
  'specimens/time-to-break': 'Just outside the window; the rate of the rig was as the method says.',
  'ambient/out-of-range': 'The hygrometer stood by the door; the loft itself was within the range.',
  'specimens/grip-breaks': 'Breaks at the grip do not count; those in the free length agree with the other rig.',
};
/** Where a control pull says nothing or ill of a rig; a case of its own does not change the answer. */
const ROUTINE: Readonly<Record<string, string>> = {
  'rig/no-evidence':
    'The control chart had too few pulls by that day to say anything. The certificate was valid, and what the house ranks is pulled on a second rig as well.',
  'trace/peak-differs': 'The display holds a peak that lies between two samples of the record; the display stands.',
  'rig/out-of-control':
    'The certificate is valid, so it stands for now; the rig goes to its calibration, and what it pulled since the last good control pull is withdrawn if that finds it wrong.',
};
/** What was pulled between the last good control pull and the bad one. */
export const OUT_OF_CONTROL_STANDS =
  'The control pull of this day itself was good, and the other rig agrees within the uncertainty of both; it stands.';
const OTHERWISE = 'Looked at together with the tester; the bench sheet agrees with the file.';

/** @param special what the reviewer writes to this submission, null where it is plain */
export const wordsFor = (code: string, special: string | null): string => ROUTINE[code] ?? special ?? WORDS[code] ?? OTHERWISE;
