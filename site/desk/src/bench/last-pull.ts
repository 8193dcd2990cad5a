import { keep, kept } from '../parts/on-device.js';

/** What was pulled last, and on which rig: the next pull is of the same until somebody chooses otherwise. */
export type LastPull = Readonly<Record<'instrument' | 'controlLine' | 'method' | 'unit', string>>;

const LAST = ['context', 'pull'] as const;

export const lastPull = (accountId: string): Partial<LastPull> => (kept(accountId, ...LAST) as LastPull | null) ?? {};
export const keepLastPull = (accountId: string, pull: LastPull): void => keep(accountId, ...LAST, pull);
