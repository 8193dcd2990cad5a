import type { ComponentChildren } from 'preact';
import { useId, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { z } from 'zod';
import '../../../../api/contract/input-words.js';
import { Refusal } from '../http/problem.js';
import { failureWords } from '../words/failure-words.js';
import { Field } from './form-field.js';
import type { FieldOptions } from './field-options.js';
import { openAround } from './open-around.js';
import { readFields, textsIn } from './read-fields.js';
import { StandingFields } from './standing-fields.js';
import { useTyped } from './use-typed.js';

interface Props<Schema extends z.ZodType> {
  /** Of the contract; the only validation. */
  readonly schema: Schema;
  readonly fields: readonly FieldOptions[];
  readonly submit: string;
  /** Name, in the whole desk, under which what is typed stays on the device until it is sent; null where a password or a search is typed. */
  readonly keptAs: string | null;
  /** What is sent besides the fields. */
  readonly fixed?: object;
  /** Makes a request of what stands in the fields, where their places alone do not. */
  readonly prepare?: (entered: Record<string, unknown>) => unknown;
  /**
   * @param key the same request has the same one, however often and after whatever reload it is sent
   * @returns what happened, in words, empty where the page says it otherwise; null where somebody looks first and nothing is sent yet
   */
  readonly onSend: (request: z.output<Schema>, key: string) => Promise<string | null>;
  /** Whether the fields are emptied after sending, for the next one. */
  readonly isRepeated?: boolean;
  readonly children?: ComponentChildren;
}

/** One form for every contract: a field's name is its place in the request, and a fault shows at its field, whoever finds it. */
export function Form<Schema extends z.ZodType>({
  schema,
  fields,
  submit,
  keptAs,
  fixed = {},
  prepare = (entered) => entered,
  onSend,
  isRepeated = false,
  children,
}: Props<Schema>) {
  const [faults, setFaults] = useState<Record<string, string>>({});
  const [said, setSaid] = useState<{ readonly words: string; readonly isFault: boolean }>({ words: '', isFault: false });
  const [isSending, setIsSending] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const id = useId();
  const typed = useTyped(form, keptAs, fields);

  // Whoever works by keys, or has scrolled past it on a phone, comes to the first of them.
  useLayoutEffect(() => {
    if (Object.keys(faults).length === 0) return;
    const first = form.current?.querySelector<HTMLElement>('[aria-invalid=true], [data-fault] input');
    openAround(first);
    first?.focus();
  }, [faults]);
  const show = (found: Record<string, string>, general: string) => {
    setFaults(found);
    const elsewhere = Object.entries(found).filter(
      ([place]) => !fields.some(({ name }) => name === place || name === onlyWithin(place, fields)),
    );
    const words = [general, ...elsewhere.map(([place, fault]) => `${place}: ${fault}`)].filter((text) => text !== '').join(' ');
    setSaid({ words: words || 'Please look at the marked fields.', isFault: true });
  };
  const send = async (event: Event) => {
    event.preventDefault();
    if (!form.current || isSending) return;
    const parsed = schema.safeParse(prepare({ ...readFields(form.current, fields), ...fixed }));
    if (!parsed.success) {
      show(faultsOf(parsed.error, fields, form.current), '');
      return;
    }
    setIsSending(true);
    try {
      const words = await onSend(parsed.data, typed.keyFor(parsed.data));
      setFaults({});
      setSaid({ words: words ?? '', isFault: false });
      if (words === null) return;
      if (isRepeated) typed.empty();
      else typed.forget();
    } catch (error) {
      const found = error instanceof Refusal ? error.faults : [];
      show(Object.fromEntries(found.map(({ pointer, detail }) => [pointer.slice(1), detail])), failureWords(error));
    } finally {
      setIsSending(false);
    }
  };
  const standing = fields.filter(({ isStanding }) => isStanding);
  const shown = (field: FieldOptions) => (
    <Field key={field.name} id={`${id}-${field.name}`} {...field} fault={faultAt(field.name, faults, fields)} />
  );
  return (
    <form ref={form} class="form" onSubmit={(event) => void send(event)} onInput={typed.note} onKeyDown={toNextReading} noValidate>
      {standing.length > 0 && <StandingFields isKnown={standing.every(isKnown)}>{standing.map(shown)}</StandingFields>}
      {fields.filter(({ isStanding }) => !isStanding).map(shown)}
      {children}
      {typed.isFromBefore && (
        <p class="soft">
          What you typed before and did not send stands here.{' '}
          <button type="button" onClick={typed.empty}>
            Empty it
          </button>
        </p>
      )}
      <div class="send">
        <button type="submit" class="main" aria-disabled={isSending}>
          {submit}
        </button>
        <p role={said.isFault ? 'alert' : 'status'} class={said.isFault ? 'signal' : ''}>
          {said.words}
        </p>
      </div>
    </form>
  );
}

const isKnown = ({ options, value = '' }: FieldOptions): boolean =>
  options ? options.length === 1 || options.some(([sent]) => sent === value) : value !== '';

/** A gauge ends each number with Enter: the form goes when the last of them is there. */
function toNextReading(event: KeyboardEvent & { readonly currentTarget: HTMLFormElement }): void {
  const { target, currentTarget } = event;
  if (event.key !== 'Enter' || !(target instanceof HTMLInputElement) || !target.matches('.reading') || target.value === '') return;
  const next = [...currentTarget.querySelectorAll<HTMLInputElement>('input.reading')].find(({ value }) => value === '');
  if (!next) return;
  event.preventDefault();
  next.focus();
}

/** Faults at the fields; what is made of a field that lacks something is told of only when there is none. */
function faultsOf({ issues }: z.ZodError, fields: readonly FieldOptions[], form: HTMLFormElement): Record<string, string> {
  const isEmpty = (place: string) => textsIn(form, place).every((text) => text.trim() === '');
  const isField = (place: string) => fields.some(({ name }) => place === name || place.startsWith(`${name}/`));
  const found = issues.map(({ path, message }) => [path.join('/'), message] as const);
  const atFields = found.filter(([place]) => isField(place));
  return Object.fromEntries(
    (atFields.length > 0 ? atFields : found).map(([place, message]) => [
      place,
      fields.some(({ name }) => name === place) && isEmpty(place) ? 'Nothing is here yet; it is needed' : message,
    ]),
  );
}

/** At its field; a fault of one item of a list at the field of the list, one of what a field is a part of at that field where it is the only part. */
const faultAt = (name: string, faults: Record<string, string>, fields: readonly FieldOptions[]): string | undefined =>
  faults[name] ?? Object.entries(faults).find(([place]) => place.startsWith(`${name}/`) || onlyWithin(place, fields) === name)?.[1];

function onlyWithin(place: string, fields: readonly FieldOptions[]): string | null {
  const within = fields.filter(({ name }) => name.startsWith(`${place}/`));
  return within.length === 1 ? (within[0]?.name ?? null) : null;
}
