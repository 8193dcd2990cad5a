import { useState } from 'preact/hooks';
import { z } from 'zod';
import { ask } from '../http/ask.js';
import { Refusal } from '../http/problem.js';
import type { Account } from './account.js';
import { SECTIONS } from './sections.js';
import type { Section } from './sections.js';

interface Props {
  readonly account: Account | null;
  readonly onLeft?: () => void;
}

const here = (path: string) => (window.location.pathname === path ? 'page' : undefined);

export function Masthead({ account, onLeft }: Props) {
  const mine = SECTIONS.filter(({ roles }) => roles.some((role) => account?.roles.includes(role)));
  const [fault, setFault] = useState('');
  const signOut = () => {
    ask(z.null(), 'DELETE', 'sessions/current', { isOpen: true }).then(onLeft, (error: unknown) => {
      // The server knows no such session any more: that is what was wanted.
      if (error instanceof Refusal && error.status === 401) onLeft?.();
      else setFault('You are still signed in: the server does not answer. Try again before you leave this device.');
    });
  };
  return (
    <header class="masthead desk-head">
      <a class="house" href="/desk/" aria-current={here('/desk/')}>
        Desk
      </a>
      {account && <Sections mine={mine} name={account.displayName} />}
      {account && (
        <ul class="person">
          <li class="wide">
            <a href="/desk/account/" aria-current={here('/desk/account/')}>
              {account.displayName}
            </a>
          </li>
          <li>
            <button type="button" onClick={signOut}>
              Sign out
            </button>
            {fault !== '' && (
              <p role="alert" class="signal">
                {fault}
              </p>
            )}
          </li>
        </ul>
      )}
    </header>
  );
}

/** In a row where there is room; behind their own name on a phone, with the account, where they would push the work out of sight. */
function Sections({ mine, name }: { mine: readonly Section[]; name: string }) {
  const items = mine.map(({ path, name: section }) => <Item key={path} path={path} name={section} />);
  const current = mine.find(({ path }) => path === window.location.pathname)?.name ?? 'Sections';
  return (
    <>
      <nav aria-label="Sections" class="wide">
        <ul>{items}</ul>
      </nav>
      <details class="narrow-sections">
        <summary>{current}</summary>
        <nav aria-label="Sections">
          <ul>
            {items}
            <Item path="/desk/account/" name={name} />
          </ul>
        </nav>
      </details>
    </>
  );
}

const Item = ({ path, name }: { path: string; name: string }) => (
  <li>
    <a href={path} aria-current={here(path)}>
      {name}
    </a>
  </li>
);
