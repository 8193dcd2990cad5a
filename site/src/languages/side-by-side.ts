/** Languages of one site: the first stands at the root, each other below its name, with the same pages at the same addresses. */

/** What stands beside the site once, whatever the language: the API, its description and clients, the desk. */
const SHARED = 'v1|docs|client|desk';

/** Where the pages of a language begin: `/`, or `/de/`. */
export const rootOf = (language: string, languages: readonly string[]): string => (language === languages[0] ? '/' : `/${language}/`);

/** Path of a page within its language. @param root where the language begins */
export const pathWithin = (root: string, { pathname }: URL): string =>
  pathname.startsWith(root) ? pathname.slice(root.length - 1) : pathname;

/** A page in every language of the site, each with its own name; none where there is one alone. @param path of the page within its language */
export const samePageIn = (languages: readonly string[], path: string) =>
  languages
    .filter((_, __, { length }) => length > 1)
    .map((language) => ({
      language,
      name: new Intl.DisplayNames([language], { type: 'language' }).of(language),
      href: rootOf(language, languages) + path.slice(1),
    }));

/**
 * Pages are written as if their language began at the root; this leads what they point to, and what they are cited by, into their language.
 * Links that name a language (`hreflang`) lead where they say.
 * @param text a page, or a document whose texts with a slash at the beginning are addresses
 * @param origin of the site; none where it does not know its own
 */
export function ledInto(root: string, text: string, origin?: string): string {
  if (root === '/') return text;
  const own = origin === undefined ? '' : `|${origin.replaceAll(/[.[\]]/g, '\\$&')}`;
  const address = new RegExp(`(?<="${own})(?<!hreflang="[\\w-]+" href="[^"]*)/(?!(?:${SHARED}|${root.slice(1, -1)})(?![\\w-]))`, 'g');
  return text.replaceAll(address, root);
}
