import { disagreementOf, isEnough, needsOf } from '../reckoning/results/eligibility.js';
import { keyOf } from '../reckoning/results/quantity.js';
import type { ComputedResults } from '../reckoning/standings/compute-edition.js';

/** Of an entry that no division takes. */
const NOTHING = { categories: [] };

/** What each entry lacks, and the evidence that it has, by the scheme of its division and beside the entries of that alone. Pure. */
export function boardEntries({ edition, results, fits }: ComputedResults) {
  const within = new Map(
    (edition.divisions ?? []).map(({ slug, variants }) => [slug, new Map([...results].filter(([one]) => variants.includes(one)))]),
  );
  return edition.entries.map(({ variant, exclusion }) => {
    const division = edition.divisions?.find(({ variants }) => variants.includes(variant));
    const { categories } = (division ?? edition).scheme?.rules ?? NOTHING;
    const compared = { fits, results: within.get(division?.slug ?? '') ?? results };
    const overruled = division?.overruled.find((one) => one.variant === variant);
    return {
      variant,
      missing: categories.filter((category) => !isEnough(category, variant, compared)).map(({ code }) => code),
      needs: categories.flatMap((category) =>
        [needsOf(category, variant, compared), disagreementOf(category, variant, results) ?? []].flat(),
      ),
      evidence: categories.map((category) => {
        const { specimens = 0, submissions = 0, testers = 0, rigs = 0 } = results.get(variant)?.get(keyOf(category)) ?? {};
        return { category: category.code, specimens, submissions, testers, rigs };
      }),
      exclusion,
      ...(division && { division: division.slug }),
      ...(overruled && { overruled: overruled.reason }),
    };
  });
}
