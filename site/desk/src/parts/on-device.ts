/** What somebody typed, on this device and for their account alone, until it is sent: nothing is lost when network, page or session goes. */
import { createContext } from 'preact';
import { useContext, useState } from 'preact/hooks';

/** Whose device it is now; empty while nobody is signed in. */
export const AccountId = createContext('');

const placeOf = (accountId: string, what: string): string => `desk.${what}.${accountId}.`;

export function keep(accountId: string, what: string, id: string, value: unknown): void {
  localStorage.setItem(placeOf(accountId, what) + id, JSON.stringify(value));
}

/** @returns null where nothing is kept */
export function kept(accountId: string, what: string, id: string): unknown {
  return JSON.parse(localStorage.getItem(placeOf(accountId, what) + id) ?? 'null') as unknown;
}

export function allKept<Value>(accountId: string, what: string): Value[] {
  return Object.keys(localStorage)
    .filter((key) => key.startsWith(placeOf(accountId, what)))
    .map((key) => JSON.parse(localStorage.getItem(key) ?? 'null') as Value);
}

export function drop(accountId: string, what: string, id: string): void {
  localStorage.removeItem(placeOf(accountId, what) + id);
}

/** A state that a reload leaves as it was; what is set to null is forgotten. */
export function useKept<Value>(id: string, empty: Value): [Value, (value: Value | null) => void] {
  const accountId = useContext(AccountId);
  const [value, setValue] = useState(() => (kept(accountId, 'text', id) as Value | null) ?? empty);
  return [
    value,
    (next) => {
      setValue(next ?? empty);
      if (next === null) drop(accountId, 'text', id);
      else keep(accountId, 'text', id, next);
    },
  ];
}
