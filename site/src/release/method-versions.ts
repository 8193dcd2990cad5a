import { inNameOrder } from '../words/locale.js';
import type { MethodDocument } from '../../../api/contract/documents/release-documents.js';
import { loadReleases } from './load-releases.js';

export interface MethodVersion {
  method: MethodDocument;
  /** Editions that used it, newest first. */
  editions: { slug: string; name: string }[];
}

/** Every method version that a current release carries, by name, the newest version first. */
export async function methodVersions(): Promise<MethodVersion[]> {
  const { current } = await loadReleases();
  const versions = new Map<string, MethodVersion>();
  for (const release of current) {
    const { methods, edition } = await release.catalogue();
    for (const { slug, number } of methods) {
      const key = `${slug}-${number}`;
      const version = versions.get(key) ?? { method: await release.method(slug, number), editions: [] };
      version.editions.push({ slug: edition.slug, name: edition.name });
      versions.set(key, version);
    }
  }
  return [...versions.values()].sort(
    (one, other) => inNameOrder(one.method.name, other.method.name) || other.method.number - one.method.number,
  );
}
