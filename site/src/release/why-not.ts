import { say } from '../words/say.js';
import { bringsBackWords, exclusionWords, needsWords } from '../words/exclusion-words.js';
import { fullName } from '../words/variant-words.js';
import type { Release } from './load-release.js';
import { measuresOf } from './measures-of.js';
import { namesOf } from './names-of.js';

/** What happened to a variant of an edition that its place alone does not tell. */
export interface WhyNot {
  readonly slug: string;
  readonly name: string;
  /** `left out`, `incomplete`, `a spool was re-identified`. */
  readonly what: string;
  /** What happened, and what would bring it back. */
  readonly words: string;
  /** Part of the variant's page that tells it. */
  readonly at: 'why' | 'spools';
}

/** Variants of a release that were left out, lack a result, or have a spool that its label misnamed. */
export async function whyNotOf(release: Release): Promise<WhyNot[]> {
  const [measures, names, all] = [
    await measuresOf(release),
    await namesOf(release),
    await Promise.all((await release.tables()).map(({ edition }) => edition())),
  ];
  return all.flatMap(({ overall, incomplete, excluded }) => {
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
}

const toldOf = (variant: Parameters<typeof fullName>[0] & { slug: string }, what: string, words: string): WhyNot => ({
  slug: variant.slug,
  name: fullName(variant),
  what,
  words,
  at: 'why',
});
