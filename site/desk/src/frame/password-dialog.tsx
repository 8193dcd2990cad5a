import { useEffect, useRef } from 'preact/hooks';
import { signInRequest } from '../../../../api/contract/endpoints/accounts.js';
import { Refusal } from '../http/problem.js';
import { Form } from '../parts/form.js';
import { signInWith } from './sign-in-with.js';

interface Props {
  readonly email: string;
  readonly onSignedIn: () => void;
  readonly onLeave: () => void;
}

/** The session ended while somebody worked: the page beneath keeps what was typed. Only the same person goes on here. */
export function PasswordDialog({ email, onSignedIn, onLeave }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} aria-labelledby="password-title" onCancel={(event) => event.preventDefault()}>
      <h2 id="password-title">Your session has ended</h2>
      <p>Nothing is lost: what you typed stays beneath. Enter the password of {email} to go on.</p>
      <Form
        schema={signInRequest}
        submit="Go on"
        keptAs={null}
        fields={[{ name: 'password', label: 'Password', kind: 'password', autocomplete: 'current-password', hasFocus: true }]}
        fixed={{ email }}
        onSend={async (request) => {
          await signInWith(request.email, request.password).catch((error: unknown) => {
            // Who it is, is known here, and nobody wants an invitation: it can only be the password.
            const isWrong = error instanceof Refusal && error.code === 'accounts/wrong-credentials';
            throw isWrong ? new Error(`This is not the password of ${email}. Type it again.`) : error;
          });
          dialog.current?.close();
          onSignedIn();
          return '';
        }}
      />
      <p>
        <button type="button" onClick={onLeave}>
          I am somebody else
        </button>
      </p>
    </dialog>
  );
}
