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

interface TokenRow {
  readonly id: string;
  readonly name: string;
  readonly scopes: readonly string[];
  readonly expiresAt: Date;
  readonly lastUsedAt: Date | null;
}

/** A token without its secret. */
export const toToken = ({ id, name, scopes, expiresAt, lastUsedAt }: TokenRow) => ({
  id,
  name,
  scopes: toRoles(scopes),
  expiresAt: expiresAt.toISOString(),
  lastUsedAt: lastUsedAt?.toISOString() ?? null,
});
