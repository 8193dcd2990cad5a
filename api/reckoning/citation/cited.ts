import type { ReleaseInputs } from '../release-inputs.js';

/** What a release is called wherever it is cited. */
export interface Cited {
  readonly title: string;
  readonly abstract: string;
  /** Who stands as its author: the house, not its testers. */
  readonly authors: readonly string[];
  readonly publisher: string;
  readonly version: string;
  /** YYYY-MM-DD. */
  readonly publishedOn: string;
  readonly keywords: readonly string[];
}

const SUBJECTS = ['fishing line', 'breaking strength', 'knot strength', 'abrasion', 'independent test'];

export function cited({ house, isDemo, revision, publishedAt, evidence }: ReleaseInputs): Cited {
  return {
    title: `${house}: ${evidence.edition.name}`,
    abstract: `Independent bench tests of fishing line: every reading as it was entered, and the places that follow from them.${isDemo ? ' Invented for demonstration: nothing in it is real.' : ''}`,
    authors: [house],
    publisher: house,
    version: `${revision}.0.0`,
    publishedOn: publishedAt.slice(0, 10),
    keywords: SUBJECTS,
  };
}
