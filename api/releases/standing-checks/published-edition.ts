import type {
  CategoryDocument,
  EditionDocument,
  HistoryPoint,
  Manifest,
  VariantDocument,
} from '../../contract/documents/release-documents.js';
import type { Bundle } from '../../reckoning/documents/bundle.js';

/** A release with all that a standing check looks at. */
export interface PublishedEdition {
  /** "2026/1". */
  readonly name: string;
  readonly manifest: Manifest;
  /** SHA-256 of the manifest as the record has it. */
  readonly digest: string;
  readonly manifestText: string;
  /** Path → SHA-256 of the bytes that are there. */
  readonly digests: ReadonlyMap<string, string>;
  /** The tables of what is compared: a release of several divisions is looked at once for each. */
  readonly edition: EditionDocument;
  readonly categories: readonly CategoryDocument[];
  readonly variants: readonly VariantDocument[];
  readonly outputs: Bundle['outputs'];
}

/** What a standing check found. */
export interface StandingFault {
  readonly check: string;
  /** Release and place in it. */
  readonly where: string;
  readonly words: string;
}

/** Release ("2026/1") → slug of a variant → what its history says of that very edition. */
export type ToldPoints = ReadonlyMap<string, ReadonlyMap<string, HistoryPoint>>;

/** A rule over everything that is published, looked at before every build of the site. Pure. */
export interface StandingCheck {
  readonly code: string;
  readonly explains: string;
  /** @param told by releases that histories of those looked at rest on */
  readonly run: (published: readonly PublishedEdition[], told: ToldPoints) => Omit<StandingFault, 'check'>[];
}
