/** Everything that a release is computed from, as plain JSON: whoever has it can compute the release again, to the last byte. */
import type { SpoolEvidence } from './evidence/catalogue-evidence.js';
import type { HouseEvidence, RemarkEvidence } from './evidence/statement-evidence.js';
import type { EditionEvidence } from './evidence/edition-evidence.js';
import type { SpreadsEvidence } from './evidence/effects-evidence.js';
import type { MethodVersion } from '../contract/endpoints/methods.js';
import type { CheckDocument, EditionDocument, HistoryPoint, VariantName } from '../contract/documents/release-documents.js';
import type { PublishedResult } from './documents/published-result.js';

/** What an earlier edition published, as far as a later one tells it again. */
export interface EarlierEdition {
  readonly edition: string;
  readonly revision: number;
  /** SHA-256 of its manifest. */
  readonly digest: string;
  /** Empty of an edition with several divisions, as are the categories: each has its own. */
  readonly overall: readonly EarlierPlace[];
  readonly categories: readonly EarlierCategory[];
  readonly divisions?: readonly {
    readonly slug: string;
    readonly overall: readonly EarlierPlace[];
    readonly categories: readonly EarlierCategory[];
  }[];
  readonly history: readonly { readonly variant: string; readonly point: HistoryPoint }[];
  /** How sure they are is told of the edition before alone. */
  readonly results: readonly PublishedResult[];
  /** What the edition found of rigs, testers and spools; absent of one older than the three before, and of a release from before it was told. */
  readonly spreads?: SpreadsEvidence;
}

interface EarlierCategory {
  readonly code: string;
  /** Key of what it ranked. */
  readonly quantity: string;
  readonly methodVersion: number;
  readonly rows: readonly EarlierPlace[];
}

interface EarlierPlace {
  /** Slug. */
  readonly variant: string;
  readonly place: number | null;
}

/** What readers saw of a revision: where → text, and who was in the top group overall. */
export interface RevisionCells {
  readonly cells: Readonly<Record<string, string>>;
  readonly top: readonly string[];
  /** Kinds of cells that it was told in; absent of a revision from before there were more than places, scores and values. */
  readonly kinds?: readonly string[];
  /** Which variants are in which division, in the order of the editor; absent of an edition with one. */
  readonly divisions?: readonly { readonly slug: string; readonly name: string; readonly variants: readonly string[] }[];
}

/** Why a later revision is made, what it takes for published, and what the revision before showed. */
export interface Correction extends Pick<NonNullable<EditionDocument['erratum']>, 'reasonCode' | 'words'> {
  readonly expects: readonly { readonly where: string; readonly before: string }[];
  readonly before: RevisionCells;
  /** Cells that earlier errata of the edition changed. */
  readonly corrected: readonly string[];
}

/** A licence by its SPDX name. */
export interface Licence {
  readonly name: string;
  readonly title: string;
  readonly path: string;
}

export interface ReleaseInputs {
  readonly house: string;
  /** What others may do with the data. */
  readonly licence: Licence;
  readonly isDemo: boolean;
  readonly revision: number;
  readonly publishedAt: string;
  readonly softwareVersion: string;
  /** Digest of the release before: the last revision of the same edition, else the current one of the edition before. */
  readonly previousDigest: string | null;
  readonly evidence: EditionEvidence;
  /** Names of the entries, by slug. */
  readonly variants: readonly VariantName[];
  /** Every version, so that it can be told which editions compare; by slug and number. The series of the pinned ones are with the edition. */
  readonly methods: readonly Omit<MethodVersion, 'id' | 'series'>[];
  /** As pinned when the edition opened. */
  readonly checks: readonly CheckDocument[];
  /** The key of blind codes as it was sealed at the opening: a line a spool, code and slug. */
  readonly blindKey: string | null;
  readonly spools: readonly SpoolEvidence[];
  /** Editions before this one, newest first. */
  readonly earlier: readonly EarlierEdition[];
  readonly correction: Correction | null;
  /** Who publishes; absent of a house that has not said so, as of a release from before it was asked. */
  readonly statement?: HouseEvidence;
  /** What stands beside the figures; absent of a release from before there was such a thing. */
  readonly remarks?: readonly RemarkEvidence[];
}
