import { useState } from 'preact/hooks';
import {
  accountResponse,
  accountsResponse,
  invitationRequest,
  invitationResponse,
  type AccountResponse,
} from '../../../../api/contract/endpoints/accounts.js';
import { ROLES } from '../../../../api/contract/roles.js';
import { AuditTrail } from '../house/audit-trail.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';
import { wordsOf } from '../words/words-of.js';

export function House() {
  const accounts = useLoaded(() => ask(accountsResponse, 'GET', 'accounts'));
  const [said, setSaid] = useState('');
  const change = (account: AccountResponse, body: object, words: string) => {
    ask(accountResponse, 'PATCH', `accounts/${account.id}`, { body, version: account.version }).then(
      () => {
        setSaid(words);
        accounts.again();
      },
      (error: unknown) => setSaid(wordsOf(error)),
    );
  };
  return (
    <>
      <h1>House</h1>
      <h2>Invite somebody</h2>
      <Invitations />
      <h2>Accounts</h2>
      <Loading of={accounts} />
      <p role="status">{said}</p>
      <ul class="rows">
        {accounts.answer?.items.map((account) => (
          <li key={account.id}>
            <p>
              {account.displayName} <span class="soft">{account.email}</span>
              {account.isDisabled && <span class="signal"> closed</span>}
            </p>
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
                      onChange={() => change(account, { roles }, `${account.displayName} is ${roles.join(', ') || 'without a role'} now.`)}
                    />{' '}
                    {role}
                  </label>
                );
              })}
              <button
                type="button"
                onClick={() =>
                  change(
                    account,
                    { isDisabled: !account.isDisabled },
                    `The account of ${account.displayName} is ${account.isDisabled ? 'open again' : 'closed'}.`,
                  )
                }
              >
                {account.isDisabled ? 'Open' : 'Close'}
                <span class="only-heard"> the account of {account.displayName}</span>
              </button>
            </fieldset>
          </li>
        ))}
      </ul>
      <h2>Who changed what</h2>
      <AuditTrail accounts={accounts.answer?.items ?? []} />
    </>
  );
}

function Invitations() {
  const [address, setAddress] = useState('');
  return (
    <>
      <Form
        schema={invitationRequest}
        submit="Make an invitation"
        isRepeated
        fields={[
          { name: 'note', label: 'Who it is for' },
          { name: 'roles', label: 'Roles', kind: 'several', options: ROLES.map((role) => [role, role] as const) },
        ]}
        onSend={async (request) => {
          const made = await ask(invitationResponse, 'POST', 'invitations', { body: request });
          setAddress(made.address);
          return `It works once, until ${dayOf(made.expiresAt)}. Send this address; it is shown this once.`;
        }}
      />
      {address !== '' && (
        <p>
          <code data-address>{address}</code>
        </p>
      )}
    </>
  );
}
