/** Addresses that will be taken away, told in time by headers that programs understand. Pure. */

interface Deprecated {
  readonly path: RegExp;
  /** As it stands in the description. */
  readonly described: string;
  /** Since when nobody should begin to use it. */
  readonly since: Date;
  /** Until when it answers at least. */
  readonly until: Date;
  /** What to use, from the same address. */
  readonly instead: (path: string) => string;
}

const DEPRECATED: readonly Deprecated[] = [
  {
    // The same bytes as the address of the edition, which has them since the first release.
    path: /^\/v1\/editions\/[^/]+\/standings$/,
    described: '/v1/editions/{edition}/standings',
    since: new Date('2026-12-01T00:00:00Z'),
    until: new Date('2028-12-01T00:00:00Z'),
    instead: (path) => path.replace(/\/standings$/, ''),
  },
];

const ENDS = 'standings';

/**
 * Headers that say so, name and value in turn; none of an address that stays.
 * @see RFC 9745 (Deprecation), RFC 8594 (Sunset), RFC 5829 (successor-version)
 */
export function deprecationHeads(path: string): readonly (readonly [name: string, value: string])[] {
  // Asked at every read: most addresses end otherwise.
  if (!path.endsWith(ENDS)) return [];
  const deprecated = DEPRECATED.find((one) => one.path.test(path));
  if (!deprecated) return [];
  const { since, until, instead } = deprecated;
  return [
    ['Deprecation', `@${since.getTime() / 1000}`],
    ['Sunset', until.toUTCString()],
    ['Link', `<${instead(path)}>; rel="successor-version"`],
  ];
}

/** Whether an address of the description is one of them. */
export const isDeprecated = (described: string): boolean => DEPRECATED.some((one) => one.described === described);
