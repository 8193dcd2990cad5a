import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { accountResponse } from '../../../../api/contract/endpoints/accounts.js';
import type { Role } from '../../../../api/contract/roles.js';
import { ask } from '../http/ask.js';
import { setAsker } from '../http/ask-password.js';
import { Refusal } from '../http/problem.js';
import { forgetSession } from '../http/session.js';
import { whenQuiet } from '../parts/when-quiet.js';
import { failureWords } from '../words/failure-words.js';
import type { Account } from './account.js';
import { Foot } from './foot.js';
import { Masthead } from './masthead.js';
import { PasswordDialog } from './password-dialog.js';
import { SignIn } from './sign-in.js';

interface Props {
  readonly Screen: ComponentType<{ account: Account }>;
  readonly roles: readonly Role[];
}

type Seat = { readonly is: 'looking' } | { readonly is: 'empty' } | { readonly is: 'failed'; readonly words: string } | Account;
const isAccount = (seat: Seat): seat is Account => 'roles' in seat;

/** Masthead, screen, and the question for the password when the session ends beneath. */
export function Frame({ Screen, roles }: Props) {
  const [seat, setSeat] = useState<Seat>({ is: 'looking' });
  const [answered, setAnswered] = useState<(() => void) | null>(null);

  useEffect(() => {
    setAsker(() => new Promise<void>((done) => whenQuiet(() => setAnswered(() => done))));
    ask(accountResponse, 'GET', 'accounts/me', { isOpen: true }).then(setSeat, (error: unknown) => {
      setSeat(error instanceof Refusal && error.status === 401 ? { is: 'empty' } : { is: 'failed', words: failureWords(error) });
    });
  }, []);

  const leave = () => {
    forgetSession();
    window.location.assign('/desk/');
  };
  const goOn = () => {
    answered?.();
    setAnswered(null);
  };

  if (!isAccount(seat)) return <Waiting seat={seat} onSignedIn={setSeat} />;
  const isWelcome = roles.length === 0 || roles.some((role) => seat.roles.includes(role));
  return (
    <>
      <Masthead account={seat} onLeft={leave} />
      <main id="content" tabIndex={-1}>
        {isWelcome ? <Screen account={seat} /> : <NotYours roles={roles} account={seat} />}
      </main>
      <Foot />
      {answered && <PasswordDialog email={seat.email} onSignedIn={goOn} onLeave={leave} />}
    </>
  );
}

function Waiting({ seat, onSignedIn }: { seat: Exclude<Seat, Account>; onSignedIn: (account: Account) => void }) {
  return (
    <>
      <Masthead account={null} />
      <main id="content" tabIndex={-1} aria-busy={seat.is === 'looking'}>
        {seat.is === 'empty' && <SignIn onSignedIn={onSignedIn} />}
        {seat.is === 'failed' && <p role="alert">{seat.words}</p>}
      </main>
      <Foot />
    </>
  );
}

function NotYours({ roles, account }: { roles: readonly Role[]; account: Account }) {
  return (
    <>
      <h1>Not for this account</h1>
      <p>
        This page is for: {roles.join(', ')}. You are signed in as {account.displayName}, {account.roles.join(', ') || 'without a role'}. An
        admin gives roles.
      </p>
      <p>
        <a href="/desk/">Your own work</a>
      </p>
    </>
  );
}
