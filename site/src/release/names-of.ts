import { fullName } from '../words/variant-words.js';
import type { Release } from './load-release.js';

const known = new WeakMap<Release, Promise<Map<string, string>>>();

/** What the slugs and codes of a release are called: its variants, categories and divisions. */
export function namesOf(release: Release): Promise<Map<string, string>> {
  const found = known.get(release) ?? look(release);
  known.set(release, found);
  return found;
}

async function look(release: Release): Promise<Map<string, string>> {
  const all = await Promise.all((await release.tables()).map(async ({ edition }) => edition()));
  return new Map(
    all.flatMap(({ division, scheme, overall, incomplete, excluded }) => [
      ...(division ? [[division.slug, division.name] as const] : []),
      ...scheme.categories.map(({ code, name }) => [code, name] as const),
      ...[...overall, ...incomplete, ...excluded].map(({ variant }) => [variant.slug, fullName(variant)] as const),
    ]),
  );
}
