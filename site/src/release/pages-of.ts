import type { Release } from './load-release.js';

/** A page of an edition or of a revision, by its path below it; the first stands at the address itself. */
interface TablesPage {
  readonly path: string | undefined;
  /** None of the page that lists several divisions, and where there is one. */
  readonly division: string | undefined;
  /** The category that it shows; none of the overall standings. */
  readonly category: string | null;
}

/** Pages of the tables of a release: overall standings and each category; with several divisions these of each, below a list of them. */
export async function pagesOf(release: Release): Promise<TablesPage[]> {
  const all = await release.tables();
  const pages = all.map(async ({ division, edition }) => {
    const at = (part: string) => [division?.slug, part].filter(Boolean).join('/') || undefined;
    const { scheme } = await edition();
    const of = { division: division?.slug };
    return [{ ...of, path: at(''), category: null }, ...scheme.categories.map(({ code }) => ({ ...of, path: at(code), category: code }))];
  });
  const list = all.length > 1 ? [{ path: undefined, division: undefined, category: null }] : [];
  return [...list, ...(await Promise.all(pages)).flat()];
}
