/** Which file of which release stands at an address of the public API. Pure. */
export interface Address {
  /** Slug of an edition; null: the newest that has the file. */
  readonly edition: string | null;
  /** Null: the current one. */
  readonly revision: number | null;
  /** As the manifest lists it. */
  readonly path: string;
}

/** Documents of an edition that are one file each: last part of the address → name. */
const OF_AN_EDITION: Readonly<Record<string, string>> = {
  standings: 'edition',
  records: 'records',
  pairs: 'pairs',
  withdrawn: 'withdrawn',
  claims: 'claims',
  'round-robins': 'round-robins',
  'retest-results': 'retests',
  rigs: 'rigs',
  catalogue: 'catalogue',
  house: 'house',
  remarks: 'remarks',
};
/** Of those, what a division has for itself. */
const OF_A_DIVISION = ['standings', 'records', 'pairs'];
const SLUG = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const REVISION = /^\d{1,6}$/;

/** The file at an address; null where none can stand. @param path without a query */
export function addressOf(path: string): Address | null {
  const parts = partsOf(path);
  if (parts?.[1] !== 'v1' || parts.includes('', 1)) return null;
  const [, , collection = '', first = '', second = '', ...rest] = parts;
  if (collection === 'releases') return ofRelease(first, second, rest);
  if (collection === 'editions') return ofEdition(first, second, rest);
  if (collection === 'variants' && parts.length === 4) return newest(`documents/variants/${first}.json`);
  if (collection === 'methods' && second === 'versions' && parts.length === 6)
    return newest(`documents/methods/${first}-${rest[0] ?? ''}.json`);
  return null;
}

function partsOf(path: string): string[] | null {
  if (!path.includes('%')) return path.split('/');
  try {
    return path.split('/').map(decodeURIComponent);
  } catch {
    return null;
  }
}

const newest = (path: string): Address => ({ edition: null, revision: null, path });

const ofRelease = (edition: string, revision: string, rest: readonly string[]): Address | null =>
  REVISION.test(revision) && rest.length > 0 ? { edition, revision: Number(revision), path: rest.join('/') } : null;

function ofEdition(edition: string, what: string, rest: readonly string[]): Address | null {
  const name =
    what === 'variants' && rest.length === 1
      ? `variants/${rest[0] ?? ''}`
      : (ofTables(what, rest) ?? (what === 'divisions' ? ofDivision(rest) : null));
  return name === null ? null : { edition, revision: null, path: `documents/${name}.json` };
}

/** Documents at an address after the edition or the division; null where none stand. */
function ofTables(what: string, rest: readonly string[]): string | null {
  if (rest.length === 0) return what === '' ? 'edition' : Object.hasOwn(OF_AN_EDITION, what) ? (OF_AN_EDITION[what] ?? null) : null;
  return what === 'standings' && rest.length === 1 ? `standings/${rest[0] ?? ''}` : null;
}

/** A division has tables of its own. */
function ofDivision([division = '', what = '', ...rest]: readonly string[]): string | null {
  if (!SLUG.test(division) || !(what === '' || OF_A_DIVISION.includes(what))) return null;
  const name = ofTables(what, rest);
  return name === null ? null : `divisions/${division}/${name}`;
}
