import type { Role } from '../contract/roles.js';
import { ROLES } from '../contract/roles.js';
import type { AccountResponse } from '../contract/endpoints/accounts.js';

export interface AccountRow {
  readonly id: string;
  readonly email: string;
  readonly displayName: string;
  readonly roles: readonly string[];
  readonly isDisabled: boolean;
  readonly version: number;
}

export const toRoles = (names: readonly string[]): Role[] => ROLES.filter((role) => names.includes(role));

export const toAccount = ({ id, email, displayName, roles, isDisabled, version }: AccountRow): AccountResponse => ({
  id,
  email,
  displayName,
  roles: toRoles(roles),
  isDisabled,
  version,
});

const FREE_FAILURES = 5;
const LONGEST_BACK_OFF_S = 900;

/**
 * Wait after so many failed sign-ins in a row: none for the first four, then 2, 4, 8 … seconds, at most 15 minutes.
 * @param failures failed sign-ins in a row
 * @returns wait [s]
 */
export function backOffSeconds(failures: number): number {
  return failures < FREE_FAILURES ? 0 : Math.min(LONGEST_BACK_OFF_S, 2 ** (failures - FREE_FAILURES + 1));
}
