import { loadReleases } from '../release/load-releases.js';
import { addressesOf } from '../release/addresses.js';
import { methodWords } from '../words/method-words.js';
import { fullName, makeWords } from '../words/variant-words.js';

/** Everything that can be looked for by name: makers, lines, variants and methods, each once. */
export async function GET(): Promise<Response> {
  const { current } = await loadReleases();
  const found = new Map<string, { id: string; kind: string; name: string; more: string }>();
  for (const release of current) {
    const { edition, revision, makers, methods } = await release.catalogue();
    const addresses = await addressesOf(edition.slug, revision);
    const add = (id: string | null, kind: string, name: string, more = '') => {
      if (id !== null && !found.has(`${kind} ${name}`)) found.set(`${kind} ${name}`, { id, kind, name, more });
    };
    for (const maker of makers) {
      add(`/makers/${maker.slug}/`, 'maker', maker.name);
      for (const line of maker.lines) {
        add(`/lines/${line.slug}/`, 'line', `${maker.name} ${line.name}`, makeWords(line));
        for (const variant of line.variants) add(addresses.variant(variant.slug), 'variant', fullName(variant), makeWords(variant));
      }
    }
    for (const { slug, number } of methods) add(`/methods/${slug}/${number}/`, 'method', `${methodWords(slug)}, version ${number}`);
  }
  return Response.json([...found.values()]);
}
