import { sessionResponse } from '../../../../api/contract/endpoints/accounts.js';
import { ask } from '../http/ask.js';
import { keepSession } from '../http/session.js';
import type { Account } from './account.js';

export async function signInWith(email: string, password: string): Promise<Account> {
  const { account, csrfToken } = await ask(sessionResponse, 'POST', 'sessions', { body: { email, password }, isOpen: true });
  keepSession(csrfToken, account.email);
  return account;
}
