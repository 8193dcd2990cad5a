/** A fault in the input: where (RFC 6901 pointer; in a file also row and column), what, and a stable code. */
export interface InputFault {
  readonly pointer: string;
  readonly detail: string;
  readonly code: string;
  /** Line of the file, the header being 1. */
  readonly row?: number;
  /** Name of the column as the header has it. */
  readonly column?: string;
  /** Text found there. */
  readonly found?: string;
  readonly expected?: string;
}

/** One kind of problem in the catalogue. */
export interface ProblemKind {
  readonly code: string;
  readonly status: number;
  readonly title: string;
  /** What it means and what to do: on the page of the error type, and in each answer. */
  readonly explains: string;
}

/** An answer that is not the one that was hoped for; becomes application/problem+json (RFC 9457). */
export class Problem extends Error {
  constructor(
    readonly kind: ProblemKind,
    readonly detail: string = kind.title,
    readonly errors: readonly InputFault[] = [],
    readonly headers: Readonly<Record<string, string>> = {},
    /** Further members of the answer (RFC 9457, 3.2). */
    readonly members: Readonly<Record<string, unknown>> = {},
  ) {
    super(`${kind.code}: ${detail}`);
  }
}

/**
 * Declares the problems of one feature.
 * @param kinds code → status, title and explanation
 * @returns the same, each carrying its code
 */
export function declareProblems<const K extends string>(kinds: Record<K, Omit<ProblemKind, 'code'>>): Record<K, ProblemKind> {
  const entries = Object.entries(kinds) as [K, Omit<ProblemKind, 'code'>][];
  const coded = entries.map(([code, kind]): [K, ProblemKind] => [code, { code, ...kind }]);
  return Object.fromEntries(coded) as Record<K, ProblemKind>;
}
