import { z } from 'zod';
import { ask } from '../http/ask.js';
import type { Account } from './account.js';
import { SECTIONS } from './sections.js';

interface Props {
  readonly account: Account | null;
  readonly onLeft?: () => void;
}

const here = (path: string) => (window.location.pathname === path ? 'page' : undefined);

export function Masthead({ account, onLeft }: Props) {
  const mine = SECTIONS.filter(({ roles }) => roles.some((role) => account?.roles.includes(role)));
  const signOut = () => {
    void ask(z.null(), 'DELETE', 'sessions/current', { isOpen: true }).then(onLeft, onLeft);
  };
  return (
    <header class="masthead desk-head">
      <a class="house" href="/desk/" aria-current={here('/desk/')}>
        Desk
      </a>
      {account && (
        <nav aria-label="Sections">
          <ul>
            {mine.map(({ path, name }) => (
              <li key={path}>
                <a href={path} aria-current={here(path)}>
                  {name}
                </a>
              </li>
            ))}
          </ul>
        </nav>
      )}
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
          </li>
        </ul>
      )}
    </header>
  );
}
