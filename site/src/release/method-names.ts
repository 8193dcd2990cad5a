import { methodVersions } from './method-versions.js';

let known: Promise<Map<string, string>> | null = null;

/** What methods are called, by slug: a method keeps its name in every version. */
export function methodNames(): Promise<Map<string, string>> {
  known ??= methodVersions().then((versions) => new Map(versions.map(({ method }) => [method.slug, method.name])));
  return known;
}
