/**
 * Path at which a page of a release stays when another revision follows; the pages of its edition where it has none of its own.
 * @param path of the page as it is read
 */
export function lastingAddress({ edition, revision }: { readonly edition: string; readonly revision: number }, path = '/'): string {
  const lasting = `/editions/${edition}/revisions/${revision}/`;
  const below = [lasting, `/editions/${edition}/`].find((above) => path.startsWith(above));
  if (below !== undefined) return lasting + path.slice(below.length);
  return path.startsWith('/variants/') ? lasting + path.slice(1) : lasting;
}
