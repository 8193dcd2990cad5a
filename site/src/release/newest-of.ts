import { loadReleases } from './load-releases.js';

// Every page asks; with ten thousand variants the answer is made once.
const known = new Map<string, Promise<Map<string, string>>>();

/**
 * Every variant, line or maker that was ever published in a current revision, with the newest edition that has it.
 * @returns Slug → slug of the edition
 */
export function newestOf(what: 'variants' | 'lines' | 'makers'): Promise<Map<string, string>> {
  const found = known.get(what) ?? look(what);
  known.set(what, found);
  return found;
}

async function look(what: 'variants' | 'lines' | 'makers'): Promise<Map<string, string>> {
  const { current } = await loadReleases();
  const newest = new Map<string, string>();
  for (const release of current) {
    const { makers } = await release.catalogue();
    const slugs = {
      makers: () => makers.map(({ slug }) => slug),
      lines: () => makers.flatMap(({ lines }) => lines.map(({ slug }) => slug)),
      variants: () => release.variants,
    };
    for (const slug of slugs[what]()) if (!newest.has(slug)) newest.set(slug, release.summary.edition);
  }
  return newest;
}
