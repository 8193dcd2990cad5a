import { say } from '../words/say.js';
import { afterWithdrawalWords, bringsBackWords, exclusionWords, needsWords } from '../words/exclusion-words.js';
import { fullName } from '../words/variant-words.js';
import type { Release } from './load-release.js';
import { measuresOf } from './measures-of.js';
import { namesOf } from './names-of.js';

/** What happened to a variant of an edition that its place alone does not tell. */
export interface WhyNot {
  readonly slug: string;
  readonly name: string;
  /** `left out`, `incomplete`, `a spool was re-identified`, `a result was withdrawn`. */
  readonly what: string;
  /** What happened, and what would bring it back. */
  readonly words: string;
  /** Part of the variant's page that tells it. */
  readonly at: 'why' | 'spools' | 'withdrawn';
}

/** Variants of a release that were left out, lack a result, have a spool that its label misnamed or a result that was withdrawn. */
export async function whyNotOf(release: Release): Promise<WhyNot[]> {
  const [measures, names, all] = [
    await measuresOf(release),
    await namesOf(release),
    await Promise.all((await release.tables()).map(({ edition }) => edition())),
  ];
  const withdrawn = Map.groupBy((await release.withdrawn()).items, ({ variant }) => variant);
  const taken = [...withdrawn].map(([slug, items]): WhyNot => {
    const told = items.map(({ reference, reason }) => `${reference}: ${reason}`);
    return {
      slug,
      name: names.get(slug) ?? slug,
      what: say`a result was withdrawn`,
      words: [...told, afterWithdrawalWords].join(' '),
      at: 'withdrawn',
    };
  });
  const others = all.flatMap(({ overall, incomplete, excluded }) => {
    const found = ({ variant }: Pick<(typeof incomplete)[number], 'variant'>): WhyNot[] => {
      const words = measures.get(variant.slug)?.reidentified.join(' ') ?? '';
      return words === ''
        ? []
        : [{ slug: variant.slug, name: fullName(variant), what: say`a spool was re-identified`, words, at: 'spools' }];
    };
    return [
      ...excluded.map(({ variant, reasonCode, words }) =>
        toldOf(variant, say`left out`, [`${exclusionWords[reasonCode] ?? reasonCode}.`, words, bringsBackWords[reasonCode]].join(' ')),
      ),
      ...incomplete.map(({ variant, needs }) => toldOf(variant, say`incomplete`, say`Needed: ${needsWords(needs, names)}.`)),
      ...[...overall, ...incomplete].flatMap(found),
    ];
  });
  return [...others, ...taken];
}

const toldOf = (variant: Parameters<typeof fullName>[0] & { slug: string }, what: string, words: string): WhyNot => ({
  slug: variant.slug,
  name: fullName(variant),
  what,
  words,
  at: 'why',
});
