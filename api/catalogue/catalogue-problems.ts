import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { lookalikeOf } from '../platform/identifiers/name-as-seen.js';
import { notValid } from '../platform/http/validation.js';
import { isBlindCode, normaliseBlindCode } from '../contract/blind-code.js';

/** The 404 that names what was asked for. */
export const notOnRecord = (what: string, key: string): Problem =>
  new Problem(platformProblems['request/not-found'], `No ${what} "${key}" is on record. Look it up in the list.`);

/** The 404 of a blind code; a mistyped one is told from one that was never given out. */
export const spoolNotOnRecord = (typed: string): Problem =>
  isBlindCode(normaliseBlindCode(typed))
    ? notOnRecord('spool', typed)
    : new Problem(
        platformProblems['request/not-found'],
        `"${typed}" is mistyped: its check character does not fit. Read the code on the spool again.`,
      );

/** The 409 of a second thing with the same key. */
export const onRecordAlready = (detail: string, pointer: string): Problem =>
  new Problem(platformProblems['record/already-exists'], detail, [{ pointer, detail, code: 'duplicate' }]);

/** The 422 of a field that names something unknown. */
export const unknownReference = (pointer: string, what: string, found: string): Problem =>
  notValid([
    {
      pointer,
      detail: `Found "${found}", but no ${what} has this slug. Add the ${what} first, or correct the slug.`,
      code: 'unknown_reference',
    },
  ]);

interface Retirable {
  readonly slug: string;
  readonly retiredOn: Date | null;
}

/** The 422 of a field that names something retired, or something under it. */
export function requireInUse(pointer: string, ...rows: readonly Retirable[]): void {
  const retired = rows.find(({ retiredOn }) => retiredOn !== null);
  if (!retired) return;
  const detail = `"${retired.slug}" is retired: nothing new is put under it. Take it into use again (DELETE …/${retired.slug}/retirement), or name another.`;
  throw notValid([{ pointer, detail, code: 'retired' }]);
}

/** Refuses a name that readers would take for another one on record. */
export function requireDistinct(name: string, onRecord: readonly string[]): void {
  const other = lookalikeOf(name, onRecord);
  if (other === undefined) return;
  const detail = `"${name}" looks like "${other}", which is on record, but is written with other characters. If it is the same, type it as that one; if not, add a word that tells them apart.`;
  throw onRecordAlready(detail, '/name');
}
