import { useState } from 'preact/hooks';
import { z } from 'zod';
import {
  accountResponse,
  passwordResetResponse,
  tokensResponse,
  type AccountResponse,
} from '../../../../api/contract/endpoints/accounts.js';
import { ROLES } from '../../../../api/contract/roles.js';
import { ask } from '../http/ask.js';
import { ShownOnce } from '../parts/shown-once.js';
import { dayOf } from '../words/day-of.js';
import { useAct } from '../parts/use-act.js';

interface Props {
  readonly accounts: readonly AccountResponse[];
  readonly onChanged: () => void;
}

/** Who is here, what each may do, and what an admin does for somebody who lost a password or a device. */
export function Accounts({ accounts, onChanged }: Props) {
  const { said, act } = useAct(onChanged);
  return (
    <>
      <p role="status">{said}</p>
      <ul class="rows">
        {accounts.map((account) => (
          <li key={account.id}>
            <p>
              {account.displayName} <span class="soft">{account.email}</span>
              {account.isDisabled && <span class="signal"> closed</span>}
            </p>
            <details class="whole">
              <summary>
                {account.roles.join(', ') || 'no role'}: <span class="soft">roles, help, close</span>
                <span class="only-heard"> the account of {account.displayName}</span>
              </summary>
              <Roles account={account} act={act} />
              <Help account={account} act={act} />
            </details>
          </li>
        ))}
      </ul>
    </>
  );
}

type Act = ReturnType<typeof useAct>['act'];

const change = (account: AccountResponse, body: object) =>
  ask(accountResponse, 'PATCH', `accounts/${account.id}`, { body, version: account.version });

function Roles({ account, act }: { account: AccountResponse; act: Act }) {
  return (
    <fieldset class="acts">
      <legend class="only-heard">Roles of {account.displayName}</legend>
      {ROLES.map((role) => {
        const has = account.roles.includes(role);
        const roles = has ? account.roles.filter((one) => one !== role) : [...account.roles, role];
        return (
          <label class="tick" key={role}>
            <input
              type="checkbox"
              checked={has}
              onChange={() =>
                act(() => change(account, { roles }), `${account.displayName} is ${roles.join(', ') || 'without a role'} now.`)
              }
            />{' '}
            {role}
          </label>
        );
      })}
    </fieldset>
  );
}

function Help({ account, act }: { account: AccountResponse; act: Act }) {
  const { id, displayName, isDisabled } = account;
  const [reset, setReset] = useState<z.infer<typeof passwordResetResponse> | null>(null);
  return (
    <>
      <div class="acts">
        <button
          type="button"
          onClick={() =>
            act(
              async () => setReset(await ask(passwordResetResponse, 'POST', `accounts/${id}/password-resets`)),
              'Hand the address over yourself.',
            )
          }
        >
          Address for a new password
        </button>
        <button
          type="button"
          onClick={() => act(() => ask(z.null(), 'DELETE', `accounts/${id}/sessions`), `${displayName} is signed out on every device.`)}
        >
          End all sessions
        </button>
        <button
          type="button"
          onClick={() =>
            act(
              () => change(account, { isDisabled: !isDisabled }),
              `The account of ${displayName} is ${isDisabled ? 'open again' : 'closed'}.`,
            )
          }
        >
          {isDisabled ? 'Open' : 'Close'} the account
        </button>
      </div>
      {reset && (
        <ShownOnce secret={reset.address} words={`${displayName} sets a new password there, once, until ${dayOf(reset.expiresAt)}.`} />
      )}
      <TokensOf account={account} act={act} />
    </>
  );
}

function TokensOf({ account: { id, displayName }, act }: { account: AccountResponse; act: Act }) {
  const [tokens, setTokens] = useState<z.infer<typeof tokensResponse>['items'] | null>(null);
  const load = async () => setTokens((await ask(tokensResponse, 'GET', `accounts/${id}/tokens`)).items);
  const revoke = (token: string, name: string) =>
    act(async () => {
      await ask(z.null(), 'DELETE', `accounts/${id}/tokens/${token}`);
      await load();
    }, `The token “${name}” of ${displayName} is revoked.`);
  if (!tokens)
    return (
      <p class="acts">
        <button type="button" onClick={() => act(load, '')}>
          Tokens of programs
        </button>
      </p>
    );
  return tokens.length === 0 ? (
    <p class="soft">No program has a token of {displayName}.</p>
  ) : (
    <ul class="rows">
      {tokens.map(({ id: token, name, scopes, expiresAt }) => (
        <li key={token}>
          <p>
            {name}{' '}
            <span class="soft">
              ({scopes.join(', ')}), until {dayOf(expiresAt)}
            </span>
          </p>
          <button type="button" onClick={() => revoke(token, name)}>
            Revoke<span class="only-heard"> {name}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
