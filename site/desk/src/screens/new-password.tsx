import { z } from 'zod';
import { SHORTEST_PASSWORD, newPassword } from '../../../../api/contract/endpoints/accounts.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';

/** Sets the password that an admin's address promised. */
export function NewPassword({ secret }: { secret: string }) {
  if (secret === '')
    return (
      <>
        <h1>New password</h1>
        <p>This address lacks its last part, behind the #. Open it exactly as it was given to you, or ask an admin for a new one.</p>
      </>
    );
  return (
    <>
      <h1>Set a new password</h1>
      <p class="lede">This address works once. You are signed out on every device, and tokens of your programs end.</p>
      <Form
        schema={newPassword}
        submit="Set the password"
        keptAs={null}
        isRepeated
        fields={[
          {
            name: 'password',
            label: 'New password',
            kind: 'password',
            autocomplete: 'new-password',
            hint: `At least ${SHORTEST_PASSWORD} characters. A sentence is easy to keep.`,
          },
        ]}
        onSend={async (request) => {
          await ask(z.null(), 'POST', `password-resets/${encodeURIComponent(secret)}/password`, { body: request, isOpen: true });
          return 'It is set.';
        }}
      />
      <p>
        <a href="/desk/">Sign in</a>
      </p>
    </>
  );
}
