import type { RefObject } from 'preact';
import { useContext, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { newKey } from '../http/new-key.js';
import type { FieldOptions } from './field-options.js';
import { AccountId, drop, keep, kept } from './on-device.js';
import { openAround } from './open-around.js';
import { textsIn } from './read-fields.js';

interface Typed {
  /** Name of a field → what stands in it, where that is not what stood there at first. */
  readonly texts: Readonly<Record<string, readonly string[]>>;
  /** What was sent last, and under which key: its answer may have been lost. */
  readonly sent?: { readonly request: string; readonly key: string };
}

const FORM = 'form';
const NOTHING: Typed = { texts: {} };

/** What is typed into a form, kept under a name until it is sent; the form of another account, or without a name, starts empty. */
export function useTyped(form: RefObject<HTMLFormElement>, keptAs: string | null, fields: readonly FieldOptions[]) {
  const accountId = useContext(AccountId);
  const typed = useRef<Typed>(NOTHING);
  const [isFromBefore, setIsFromBefore] = useState(false);
  const isKept = keptAs !== null && accountId !== '';

  useLayoutEffect(() => {
    const before = isKept ? (kept(accountId, FORM, keptAs) as Typed | null) : null;
    if (!form.current || !before) return;
    typed.current = before;
    for (const { name } of fields) if (before.texts[name]) putInto(form.current, name, before.texts[name]);
    openAround(form.current);
    setIsFromBefore(true);
  }, []);

  const update = (next: Typed): void => {
    typed.current = next;
    if (!isKept) return;
    if (Object.keys(next.texts).length > 0) keep(accountId, FORM, keptAs, next);
    else drop(accountId, FORM, keptAs);
  };
  const forget = (): void => {
    update(NOTHING);
    setIsFromBefore(false);
  };
  return {
    isFromBefore,
    note: (): void => {
      if (form.current) update({ ...typed.current, texts: changedIn(form.current, fields) });
    },
    /** The same request again is sent under the same key, also after a reload; another one is another. */
    keyFor: (request: unknown): string => {
      const text = JSON.stringify(request);
      const { sent } = typed.current;
      if (sent?.request === text) return sent.key;
      const key = newKey();
      update({ ...typed.current, sent: { request: text, key } });
      return key;
    },
    forget,
    /** Everything as it stood at first, but for what holds for many in a row. */
    empty: (): void => {
      forget();
      if (form.current) for (const field of fields) if (!field.isStanding) putInto(form.current, field.name, atFirst(field));
    },
  };
}

/** For what is typed into a form and sent from beside it. */
export function useForgetForm(keptAs: string): () => void {
  const accountId = useContext(AccountId);
  return () => drop(accountId, FORM, keptAs);
}

function changedIn(form: HTMLFormElement, fields: readonly FieldOptions[]): Typed['texts'] {
  const entered = fields.map((field) => [field, textsIn(form, field.name)] as const);
  const isChanged = ([field, texts]: (typeof entered)[number]) => JSON.stringify(texts) !== JSON.stringify(atFirst(field));
  return Object.fromEntries(entered.filter(isChanged).map(([{ name }, texts]) => [name, texts]));
}

/** What stands in a field before anybody typed. */
function atFirst({ kind, value = '', options = [], ticked = [] }: FieldOptions): readonly string[] {
  const sent = options.map(([one]) => one);
  if (kind === 'several') return sent.filter((one) => ticked.includes(one));
  if (kind !== 'choice' || sent.includes(value)) return [value];
  return sent.slice(0, 1);
}

function putInto(form: HTMLFormElement, name: string, texts: readonly string[]): void {
  for (const control of form.querySelectorAll<HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement>(`[name="${CSS.escape(name)}"]`)) {
    if (control instanceof HTMLInputElement && control.type === 'checkbox') control.checked = texts.includes(control.value);
    else if (!(control instanceof HTMLSelectElement) || [...control.options].some(({ value }) => value === texts[0]))
      control.value = texts[0] ?? '';
  }
}
