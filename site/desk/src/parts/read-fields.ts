import type { FieldOptions } from './field-options.js';
import { textIn } from './text-in.js';

/** What stands in the fields, at the places that their names say. */
export function readFields(form: HTMLFormElement, fields: readonly FieldOptions[]): Record<string, unknown> {
  const entered = new FormData(form);
  const request: Record<string, unknown> = {};
  for (const field of fields) setAt(request, field.name.split('/'), valueOf(entered, field));
  return request;
}

export const textsIn = (form: HTMLFormElement, name: string): string[] => new FormData(form).getAll(name).map(String);

function valueOf(entered: FormData, { name, kind, isOptional = false }: FieldOptions): unknown {
  if (kind === 'several') return entered.getAll(name);
  const text = textIn(entered, name);
  if (text === '' && isOptional) return null;
  // Sent as text, to the last digit; of what a gauge or a label shows, the comma is part of the record.
  if (kind === 'decimal') return text.replace(',', '.');
  return kind === 'number' && text !== '' ? Number(text.replace(',', '.')) : text;
}

function setAt(request: Record<string, unknown>, [first = '', ...rest]: string[], value: unknown): void {
  if (rest.length === 0) {
    request[first] = value;
    return;
  }
  const inner = (request[first] ??= {}) as Record<string, unknown>;
  setAt(inner, rest, value);
}
