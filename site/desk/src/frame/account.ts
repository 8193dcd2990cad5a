import type { AccountResponse } from '../../../../api/contract/endpoints/accounts.js';

export type Account = AccountResponse;
