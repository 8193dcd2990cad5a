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

/** So many sections fit a line of a phone. */
const FEW = 3;

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
      {account && <Sections mine={mine} />}
      {account && (
        <ul class="person">
          <li>
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

/** In a row where there is room; behind their own name on a phone, where many would push the work out of sight. */
function Sections({ mine }: { mine: readonly Section[] }) {
  const list = (
    <ul>
      {mine.map(({ path, name }) => (
        <li key={path}>
          <a href={path} aria-current={here(path)}>
            {name}
          </a>
        </li>
      ))}
    </ul>
  );
  const current = mine.find(({ path }) => path === window.location.pathname)?.name ?? 'Sections';
  return (
    <>
      <nav aria-label="Sections" class={mine.length > FEW ? 'wide' : ''}>
        {list}
      </nav>
      {mine.length > FEW && (
        <details class="narrow-sections">
          <summary>{current}</summary>
          <nav aria-label="Sections">{list}</nav>
        </details>
      )}
    </>
  );
}
