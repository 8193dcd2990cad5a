import type { Difference } from './differences.js';
import type { Verdict } from './verify-release.js';

/** Every release but the first names the digest of the one before; none is named by two. Pure. */
export function chainFaults(verdicts: readonly Verdict[]): Difference[] {
  const digests = new Set(verdicts.map(({ digest }) => digest));
  return verdicts.flatMap(({ edition, revision, previousDigest }) => {
    const fault = (found: string, expected: string): Difference[] => [
      { file: `${edition}/${revision}/manifest.json`, where: '/previousDigest', found, expected },
    ];
    if (revision > 1) {
      const before = verdicts.find((other) => other.edition === edition && other.revision === revision - 1);
      if (before && before.digest !== previousDigest) return fault(String(previousDigest), before.digest);
    }
    if (previousDigest === null || digests.has(previousDigest)) return [];
    return verdicts.length > 1 ? fault(previousDigest, 'the digest of a release that is there') : [];
  });
}
