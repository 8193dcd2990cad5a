import type { ComponentChildren } from 'preact';
import { useId, useRef, useState } from 'preact/hooks';
import type { z } from 'zod';
import { Refusal } from '../http/problem.js';
import { failureWords } from '../words/failure-words.js';
import { Field } from './form-field.js';
import type { FieldOptions } from './form-field.js';
import { readFields } from './read-fields.js';

interface Props<Schema extends z.ZodType> {
  /** Of the contract; the only validation. */
  readonly schema: Schema;
  readonly fields: readonly FieldOptions[];
  readonly submit: string;
  /** What is sent besides the fields. */
  readonly fixed?: object;
  /** Makes a request of what stands in the fields, where their places alone do not. */
  readonly prepare?: (entered: Record<string, unknown>) => unknown;
  /** @returns what happened, in words; empty where the page says it otherwise */
  readonly onSend: (request: z.output<Schema>) => Promise<string>;
  /** Whether the fields are emptied after sending, for the next one. */
  readonly isRepeated?: boolean;
  readonly children?: ComponentChildren;
}

/** One form for every contract: a field's name is its place in the request, and a fault shows at its field, whoever finds it. */
export function Form<Schema extends z.ZodType>({
  schema,
  fields,
  submit,
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

  const show = (found: Record<string, string>, general: string) => {
    setFaults(found);
    const elsewhere = Object.entries(found).filter(([place]) => !fields.some(({ name }) => name === place));
    const words = [general, ...elsewhere.map(([place, fault]) => `${place}: ${fault}`)].filter((text) => text !== '').join(' ');
    setSaid({ words: words || 'Please look at the marked fields.', isFault: true });
  };
  const send = async (event: Event) => {
    event.preventDefault();
    if (!form.current || isSending) return;
    const parsed = schema.safeParse(prepare({ ...readFields(form.current, fields), ...fixed }));
    if (!parsed.success) {
      show(Object.fromEntries(parsed.error.issues.map(({ path, message }) => [path.join('/'), message])), '');
      return;
    }
    setIsSending(true);
    try {
      const words = await onSend(parsed.data);
      setFaults({});
      setSaid({ words, isFault: false });
      if (isRepeated) form.current.reset();
    } catch (error) {
      const found = error instanceof Refusal ? error.faults : [];
      show(Object.fromEntries(found.map(({ pointer, detail }) => [pointer.slice(1), detail])), failureWords(error));
    } finally {
      setIsSending(false);
    }
  };
  return (
    <form ref={form} class="form" onSubmit={(event) => void send(event)} noValidate>
      {fields.map((field) => (
        <Field key={field.name} id={`${id}-${field.name}`} {...field} fault={faults[field.name] ?? faultWithin(faults, field.name)} />
      ))}
      {children}
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

/** A fault of one item of a list shows at the field of the list. */
const faultWithin = (faults: Record<string, string>, name: string): string | undefined =>
  Object.entries(faults).find(([place]) => place.startsWith(`${name}/`))?.[1];
