import type { ReadingRole } from '../contract/submission-content.js';
import type { CheckedInstrument } from './check-input.js';

/** Kinds of instrument on which each role is read; time is read off the rig's own clock. */
const KINDS: Readonly<Record<ReadingRole, readonly string[]>> = {
  breakingForce: ['forceGauge', 'loadFrame'],
  timeToBreak: [],
  wideDiameter: ['micrometer', 'opticalGauge'],
  narrowDiameter: ['micrometer', 'opticalGauge'],
  mass: ['balance'],
  length: ['lengthMeasure'],
};

/** Whether a role needs an instrument of its own among those named. */
export const needsInstrument = (role: ReadingRole): boolean => KINDS[role].length > 0;

/** The named instruments on which a role can have been read. */
export const instrumentsFor = <Named extends CheckedInstrument>(role: ReadingRole, instruments: readonly Named[]): Named[] =>
  instruments.filter(({ kind }) => KINDS[role].includes(kind));
