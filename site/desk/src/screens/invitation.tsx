import { SHORTEST_PASSWORD, acceptanceRequest, accountResponse } from '../../../../api/contract/endpoints/accounts.js';
import { signInWith } from '../frame/sign-in-with.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';

/** Makes the account that an invitation is for, and signs in with it. */
export function Invitation({ secret }: { secret: string }) {
  if (secret === '')
    return (
      <>
        <h1>Invitation</h1>
        <p>This address lacks its last part, behind the #. Open it exactly as it was sent, or ask an admin for a new one.</p>
      </>
    );
  return (
    <>
      <h1>Make your account</h1>
      <p class="lede">This address works once. Results carry your name as you write it here.</p>
      <Form
        schema={acceptanceRequest}
        submit="Make the account"
        keptAs={null}
        fields={[
          { name: 'email', label: 'E-mail', kind: 'email', autocomplete: 'username', hint: 'You sign in with it.' },
          { name: 'displayName', label: 'Name', autocomplete: 'name', hint: 'Shown on published pages; a number or a short name will do.' },
          {
            name: 'password',
            label: 'Password',
            kind: 'password',
            autocomplete: 'new-password',
            hint: `At least ${SHORTEST_PASSWORD} characters. A sentence is easy to keep.`,
          },
        ]}
        onSend={async (request) => {
          await ask(accountResponse, 'POST', `invitations/${encodeURIComponent(secret)}/acceptance`, { body: request, isOpen: true });
          await signInWith(request.email, request.password);
          window.location.assign('/desk/');
          return 'Your account is there.';
        }}
      />
    </>
  );
}
