import { StandardSchemaValidationPipe } from '@nestjs/common';
import { platformProblems } from '../errors/platform.errors.js';
import { Problem } from '../errors/problem.js';
import type { InputFault } from '../errors/problem.js';
import { MOST_FAULTS } from './problems/content-faults.js';

interface Issue {
  readonly message: string;
  readonly path?: readonly unknown[];
  readonly code?: string;
  readonly keys?: readonly string[];
  readonly errors?: readonly (readonly Issue[])[];
}

const escape = (part: unknown): string => String(part).replaceAll('~', '~0').replaceAll('/', '~1');

const pointerTo = (path: readonly unknown[]): string =>
  path.map((part) => `/${escape(typeof part === 'object' && part !== null && 'key' in part ? part.key : part)}`).join('');

/** Every issue of a schema as a fault with its pointer (RFC 6901); an unknown field is named itself. */
export function toFaults(issues: readonly Issue[]): InputFault[] {
  return issues.flatMap((issue) => {
    const path = issue.path ?? [];
    if (issue.code === 'unrecognized_keys') {
      return (issue.keys ?? []).map((key) => ({
        pointer: pointerTo([...path, key]),
        detail: `"${key}" is not a field here; remove it or correct its name.`,
        code: 'unknown_field',
      }));
    }
    // Of several forms the one that fits best is told.
    const [nearest] = [...(issue.errors ?? [])].sort((a, b) => a.length - b.length);
    if (nearest && nearest.length > 0) return toFaults(nearest.map((inner) => ({ ...inner, path: [...path, ...(inner.path ?? [])] })));
    return [{ pointer: pointerTo(path), detail: issue.message, code: issue.code ?? 'not_valid' }];
  });
}

/** The 422 that lists the faults of an input; of very many the first 100, the rest counted. */
export function notValid(faults: readonly InputFault[]): Problem {
  const count = faults.length === 1 ? '1 fault' : `${faults.length} faults`;
  const furtherFaults = Math.max(0, faults.length - MOST_FAULTS);
  const listed = furtherFaults === 0 ? '' : `, the first ${MOST_FAULTS} are listed`;
  const members = furtherFaults === 0 ? {} : { furtherFaults };
  return new Problem(
    platformProblems['request/not-valid'],
    `${count} found${listed}; nothing was stored.`,
    faults.slice(0, MOST_FAULTS),
    {},
    members,
  );
}

/** Validates bodies, queries and parameters by the zod schema at their decorator. */
export const validationPipe = new StandardSchemaValidationPipe({
  exceptionFactory: (issues) => notValid(toFaults(issues as readonly Issue[])),
});
