import { signInRequest } from '../../../../api/contract/endpoints/accounts.js';
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
        fields={[
          { name: 'email', label: 'E-mail', kind: 'email', autocomplete: 'username', value: lastEmail() },
          { name: 'password', label: 'Password', kind: 'password', autocomplete: 'current-password' },
        ]}
        onSend={async ({ email, password }) => {
          onSignedIn(await signInWith(email, password));
          return '';
        }}
      />
      <p class="soft">
        No account yet? An admin of your house sends you an address that works once. <a href="/">To the results</a>
      </p>
    </>
  );
}
