/** Where the address of something that has a successor leads, in the API and on the site in each of its languages. Pure. */
const KINDS = { makers: 'maker', lines: 'line', variants: 'variant' } as const;
type Kind = (typeof KINDS)[keyof typeof KINDS];

/**
 * @param address path and query
 * @param successorOf slug of what took its place; null when nothing did
 * @returns the same address under the slug of the successor; null where it leads nowhere else
 */
export function successorAddress(address: string, successorOf: (kind: Kind, slug: string) => string | null): string | null {
  const [, before = '', collection = '', slug = '', rest = ''] =
    /^(\/v1|\/[a-z]{2})?\/(makers|lines|variants)\/([a-z0-9-]+)((?:[/?].*)?)$/.exec(address) ?? [];
  if (!Object.hasOwn(KINDS, collection)) return null;
  const successor = successorOf(KINDS[collection as keyof typeof KINDS], slug);
  return successor === null ? null : `${before}/${collection}/${successor}${rest}`;
}
