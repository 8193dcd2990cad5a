/** A sheet as this device holds it, ahead of the server: nothing typed is lost when the network, the page or the session goes. */
import { allKept, drop, keep } from '../parts/on-device.js';
import type { Sheet } from './sheet.js';

export interface DeviceCopy {
  /** One a tab, so that two tabs on one draft never write over each other. */
  readonly id: string;
  readonly reference: string | null;
  /** A returned submission waits on the device alone; a draft is on the server too. */
  readonly isDraft: boolean;
  /** Version of the draft that this one is built on. */
  readonly version: number | null;
  readonly sheet: Sheet;
  /** What the server holds as far as is known. */
  readonly sent: Sheet | null;
  /** What was on its way last; its answer may have been lost. */
  readonly attempted: Sheet | null;
  readonly sentAt: string | null;
  /** Key of the handing-in, once it was pressed. */
  readonly handInKey: string | null;
}

const SHEET = 'sheet';

export const keepCopy = (accountId: string, copy: DeviceCopy): void => keep(accountId, SHEET, copy.id, copy);
export const dropCopy = (accountId: string, id: string): void => drop(accountId, SHEET, id);
export const copiesOf = (accountId: string): DeviceCopy[] => allKept<DeviceCopy>(accountId, SHEET);

/** Whether two texts say the same, in whatever order their fields are kept. */
export const isSame = (one: unknown, other: unknown): boolean => inOrder(one) === inOrder(other);

const inOrder = (value: unknown): string =>
  JSON.stringify(value, (_, inner: unknown) =>
    inner !== null && typeof inner === 'object' && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );

/** Rows that the server does not hold yet. */
export function waitingRows({ sheet, sent }: DeviceCopy): number {
  return sheet.rows.filter((row, i) => Object.keys(row.cells).length > 0 && !isSame(row, sent?.rows[i])).length;
}
