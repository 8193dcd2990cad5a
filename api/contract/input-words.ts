/** What is wrong with an input, in words for whoever typed it; a schema that says it better says it itself. Loading this sets them for all schemas. */
import { z } from 'zod';

const KINDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  object: 'an object of fields',
  array: 'a list',
  record: 'an object of fields',
  null: 'null',
  undefined: 'nothing',
};
const FORMS: Readonly<Record<string, string>> = {
  date: 'a day written year-month-day, e.g. 2026-11-21',
  datetime: 'a time as of ISO 8601 in UTC, e.g. 2026-11-21T09:00:00Z',
  email: 'an address of e-mail, e.g. you@example.org',
  url: 'an address of a page, e.g. https://example.org/',
  uuid: 'an id as an answer gave it, a UUID',
};
const COUNTED: Readonly<Record<string, string>> = { string: 'character', array: 'item', set: 'item', record: 'field' };
const number = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;
const LONGEST_SHOWN = 40;

/** What was typed, short enough to be read. */
function shown(input: unknown): string {
  if (input === undefined) return 'nothing';
  if (Number.isNaN(input)) return 'what is no number';
  if (Array.isArray(input)) return 'a list';
  if (typeof input === 'object' && input !== null) return 'an object of fields';
  const text = typeof input === 'string' ? input : JSON.stringify(input);
  const short = text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text;
  return typeof input === 'string' ? `"${short}"` : short;
}

/** A day as spreadsheets write it → the same as it is expected, where only one day can be meant; else what makes it plain. */
function dayMeant(text: string): string {
  const parts = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4})$/.exec(text.trim());
  if (!parts) return '';
  const [first = 0, second = 0, year = 0] = parts.slice(1).map(Number);
  const written = (month: number, day: number) => `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  if (first > 12 && second <= 12) return `; ${written(second, first)} may be meant. Give the column the format "Text" in the spreadsheet`;
  if (second > 12 && first <= 12) return `; ${written(first, second)} may be meant. Give the column the format "Text" in the spreadsheet`;
  return `; it may be ${written(second, first)} or ${written(first, second)}, and nothing is guessed`;
}

const bound = (least: boolean, origin: string, limit: number | bigint): string => {
  const counted = COUNTED[origin];
  return `${least ? 'at least' : 'at most'} ${counted === undefined ? limit : number(Number(limit), counted)}`;
};

function sized(origin: string, input: unknown): string {
  const counted = COUNTED[origin];
  const length = typeof input === 'string' || Array.isArray(input) ? input.length : null;
  if (length === 0) return 'nothing';
  return counted === undefined || length === null ? shown(input) : number(length, counted);
}

const list = (values: readonly unknown[]): string => `${values.length > 1 ? 'one of ' : ''}${values.map(String).join(', ')}`;

/** Which of several forms an input has is told by one of its fields, or not at all. */
function unionWords({ input, discriminator, options }: z.core.$ZodRawIssue<z.core.$ZodIssueInvalidUnion>): string {
  if (discriminator === undefined || !Array.isArray(options))
    return `Found ${shown(input)}, expected one of the forms that the description of this field tells`;
  const found = typeof input === 'object' && input !== null ? (input as Record<string, unknown>)[discriminator] : input;
  return `Found ${shown(found)} as "${discriminator}", expected ${list(options)}`;
}

/** @returns what was found and what is expected, without a full stop */
export function inputWords(issue: z.core.$ZodRawIssue): string {
  const { input } = issue;
  switch (issue.code) {
    case 'invalid_type':
      return input === undefined
        ? `It is missing; expected ${KINDS[issue.expected] ?? 'a value'}`
        : `Found ${shown(input)}, expected ${KINDS[issue.expected] ?? 'another value'}`;
    case 'invalid_value':
      return input === undefined
        ? `It is missing; expected ${list(issue.values)}`
        : `Found ${shown(input)}, expected ${list(issue.values)}`;
    case 'too_small':
      return `Found ${sized(issue.origin, input)}, expected ${issue.inclusive === false ? `more than ${issue.minimum}` : bound(true, issue.origin, issue.minimum)}`;
    case 'too_big':
      return `Found ${sized(issue.origin, input)}, expected ${issue.inclusive === false ? `less than ${issue.maximum}` : bound(false, issue.origin, issue.maximum)}`;
    case 'invalid_format':
      return `Found ${shown(input)}, expected ${FORMS[issue.format] ?? 'the form that the description of this field tells'}${issue.format === 'date' ? dayMeant(String(input)) : ''}`;
    case 'not_multiple_of':
      return `Found ${shown(input)}, expected a multiple of ${issue.divisor}`;
    case 'unrecognized_keys':
      return `${issue.keys.map((key) => `"${key}"`).join(', ')}: no such field here; remove it or correct its name`;
    case 'invalid_union':
      return unionWords(issue);
    default:
      return `Found ${shown(input)}, expected one of the forms that the description of this field tells`;
  }
}

z.config({ customError: inputWords });
