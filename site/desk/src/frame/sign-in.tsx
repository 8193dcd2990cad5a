import { z } from 'zod';
import { lostPasswordRequest, signInRequest } from '../../../../api/contract/endpoints/accounts.js';
import { ask } from '../http/ask.js';
import { lastEmail } from '../http/session.js';
import { Form } from '../parts/form.js';
import type { Account } from './account.js';
import { signInWith } from './sign-in-with.js';

export function SignIn({ onSignedIn }: { onSignedIn: (account: Account) => void }) {
  return (
    <>
      <h1>Sign in</h1>
      <p class="lede">
        The desk is for those who test, review, edit and look after the house. The published results are open to everybody.
      </p>
      <Form
        schema={signInRequest}
        submit="Sign in"
        keptAs={null}
        fields={[
          { name: 'email', label: 'E-mail', kind: 'email', autocomplete: 'username', value: lastEmail() },
          { name: 'password', label: 'Password', kind: 'password', autocomplete: 'current-password' },
        ]}
        onSend={async ({ email, password }) => {
          onSignedIn(await signInWith(email, password));
          return '';
        }}
      />
      <details>
        <summary>The password is forgotten</summary>
        <p>A letter brings an address where a new one is set. Without a mail server an admin of your house makes you that address.</p>
        <Form
          schema={lostPasswordRequest}
          submit="Send the letter"
          keptAs={null}
          fields={[{ name: 'email', label: 'Address of your account', kind: 'email', autocomplete: 'username' }]}
          onSend={async (request) => {
            await ask(z.unknown(), 'POST', 'password-resets', { body: request, isOpen: true });
            return 'If there is such an account, the letter is on its way. Its address works once.';
          }}
        />
      </details>
      <p class="soft">
        No account yet? An admin of your house sends you an address that works once. <a href="/">To the results</a>
      </p>
    </>
  );
}
