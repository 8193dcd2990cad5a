import { readFileSync } from 'node:fs';

/** A tolerance for every number, or one by the nearest enclosing key of the expected value. */
interface Tolerance {
  rel?: number;
  abs?: number;
  exact?: boolean;
}

export interface ReferenceCase {
  id: string;
  source: string;
  provenance: 'read' | 'recomputed' | 'memory';
  // Each case has its own shape; the test that reads it knows which.
  inputs: any;
  expected: any;
  tolerance: Record<string, Tolerance> | Tolerance;
}

/** Reads one file of reference cases, by id. */
export function referenceCases(topic: string): Record<string, ReferenceCase> {
  const cases = JSON.parse(readFileSync(new URL(`../fixtures/${topic}.json`, import.meta.url), 'utf8')) as ReferenceCase[];
  return Object.fromEntries(cases.map((one) => [one.id, one]));
}

/** The name of a test: what, and where its numbers come from. */
export function named(one: ReferenceCase): string {
  return `${one.id} (${one.provenance === 'memory' ? 'from memory' : one.provenance}): ${one.source}`;
}

/** Compares found numbers with the expected ones of a case, within its tolerance; `found` may leave out keys that another test covers. */
export function expectReference(one: ReferenceCase, found: unknown, expected: unknown = one.expected): void {
  compare(found, expected, isTolerance(one.tolerance) ? one.tolerance : undefined, one.tolerance as Record<string, Tolerance>, one.id);
}

function isTolerance(tolerance: ReferenceCase['tolerance']): tolerance is Tolerance {
  return ['rel', 'abs', 'exact'].some((key) => typeof (tolerance as Tolerance)[key as keyof Tolerance] !== 'object' && key in tolerance);
}

function compare(found: any, expected: any, tolerance: Tolerance | undefined, byKey: Record<string, any>, path: string): void {
  if (typeof expected === 'number' && typeof found === 'number') {
    const limits = tolerance ?? byKey['default'];
    if (!limits) throw new Error(`${path}: the case states no tolerance`);
    const allowed = limits.exact ? 0 : limits.rel !== undefined ? limits.rel * Math.abs(expected) : limits.abs;
    const error = Math.abs(found - expected);
    if (!(error <= allowed)) throw new Error(`${path}: found ${found}, expected ${expected} within ${allowed}, off by ${error}`);
    return;
  }
  if (expected === null || typeof expected !== 'object') {
    expect({ path, value: found }).toEqual({ path, value: expected });
    return;
  }
  if (Array.isArray(expected)) expect({ path, length: found.length }).toEqual({ path, length: expected.length });
  for (const key of Object.keys(found)) {
    expect(Object.keys(expected)).toContain(key);
    const own = byKey[key];
    compare(
      found[key],
      expected[key],
      own && typeof own === 'object' && isTolerance(own) ? own : tolerance,
      own && !isTolerance(own) ? own : byKey,
      `${path}.${key}`,
    );
  }
}
