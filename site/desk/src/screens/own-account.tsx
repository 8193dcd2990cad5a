import { z } from 'zod';
import {
  passwordChange,
  tokenRequest,
  tokenResponse,
  tokensResponse,
  SHORTEST_PASSWORD,
} from '../../../../api/contract/endpoints/accounts.js';
import { useState } from 'preact/hooks';
import { Interests } from '../account/interests.js';
import { Sessions } from '../account/sessions.js';
import type { ScreenProps } from '../frame/open-screen.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';

export function OwnAccount({ account }: ScreenProps) {
  return (
    <>
      <h1>{account.displayName}</h1>
      <dl class="context">
        <div>
          <dt>E-mail</dt>
          <dd>{account.email}</dd>
        </div>
        <div>
          <dt>Roles</dt>
          <dd>{account.roles.join(', ') || 'none yet'}</dd>
        </div>
      </dl>
      <Password />
      <Sessions />
      <Interests />
      <Tokens roles={account.roles} />
    </>
  );
}

function Password() {
  return (
    <section>
      <h2>Password</h2>
      <p>A new one ends your sessions on other devices.</p>
      <Form
        schema={passwordChange}
        submit="Change the password"
        keptAs={null}
        isRepeated
        fields={[
          { name: 'currentPassword', label: 'Password until now', kind: 'password', autocomplete: 'current-password' },
          {
            name: 'newPassword',
            label: 'New password',
            kind: 'password',
            autocomplete: 'new-password',
            hint: `At least ${SHORTEST_PASSWORD} characters.`,
          },
        ]}
        onSend={async (request) => {
          await ask(z.null(), 'POST', 'accounts/me/password-changes', { body: request });
          return 'The password is changed.';
        }}
      />
    </section>
  );
}

function Tokens({ roles }: { roles: ScreenProps['account']['roles'] }) {
  const tokens = useLoaded(() => ask(tokensResponse, 'GET', 'tokens'));
  const [shown, setShown] = useState('');
  const revoke = (id: string) => void ask(z.null(), 'DELETE', `tokens/${id}`).then(tokens.again);
  return (
    <section>
      <h2>Tokens for programs</h2>
      <p>A program of yours signs in with a token; it may do no more than the roles that you give it.</p>
      <Loading of={tokens} />
      <ul class="rows">
        {tokens.answer?.items.map(({ id, name, scopes, expiresAt, lastUsedAt }) => (
          <li key={id}>
            <p>
              {name} <span class="soft">({scopes.join(', ')})</span>
            </p>
            <span class="soft">
              until {dayOf(expiresAt)}, {lastUsedAt === null ? 'never used' : `last used ${dayOf(lastUsedAt)}`}
            </span>
            <button type="button" onClick={() => revoke(id)}>
              Revoke <span class="only-heard">{name}</span>
            </button>
          </li>
        ))}
      </ul>
      {tokens.answer?.items.length === 0 && <p class="soft">You have none; none is needed to work here.</p>}
      <Form
        schema={tokenRequest}
        submit="Make a token"
        keptAs="token"
        isRepeated
        fields={[
          { name: 'name', label: 'What it is for' },
          { name: 'expiresInDays', label: 'Days it holds', kind: 'number', value: '90' },
          { name: 'scopes', label: 'Roles it may use', kind: 'several', options: roles.map((role) => [role, role] as const) },
        ]}
        onSend={async (request) => {
          const { token } = await ask(tokenResponse, 'POST', 'tokens', { body: request });
          setShown(token);
          tokens.again();
          return 'Made. Copy it now; it is shown this once.';
        }}
      />
      {shown !== '' && (
        <p>
          <code>{shown}</code>
        </p>
      )}
    </section>
  );
}
