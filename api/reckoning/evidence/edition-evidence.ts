/** What an edition's results are computed from: plain JSON, decimals as text, in the order of slugs and references, so that it reads the same whoever reads it. */
import type { ClaimEvidence } from './catalogue-evidence.js';
import type { ControlPullEvidence } from './control-pull-evidence.js';
import type { InstrumentEvidence } from './instrument-evidence.js';
import type { RetestsEvidence } from './retests-evidence.js';
import type { RoundRobinEvidence } from './round-robin-evidence.js';
import type { SubmissionEvidence } from './submission-evidence.js';
import type { WithdrawnEvidence } from './withdrawn-evidence.js';
import type { EffectsEvidence } from './effects-evidence.js';
import type { Amendment } from '../../contract/amendment.js';
import type { Superseded } from '../../contract/superseded.js';
import type { DivisionRule } from '../../contract/division.js';
import type { SchemeRules } from '../../contract/endpoints/schemes.js';
import type { PinnedMethod } from '../results/quantity.js';

export interface EntryEvidence {
  /** Slug of the variant. */
  readonly variant: string;
  readonly exclusion: { readonly reasonCode: string; readonly words: string; readonly effect: 'closedUp' | 'shownUnplaced' } | null;
}

export interface SchemeEvidence {
  readonly slug: string;
  readonly number: number;
  readonly name: string;
  readonly words: string;
  readonly rules: SchemeRules;
}

/** What is compared within an edition that has several: an entry is in exactly one. */
export interface DivisionEvidence {
  readonly slug: string;
  readonly name: string;
  readonly takes: DivisionRule;
  readonly scheme: SchemeEvidence;
  /** Slugs of its entries, those that an editor put here against the rule too. */
  readonly variants: readonly string[];
  readonly overruled: readonly { readonly variant: string; readonly reason: string }[];
}

/** What an edition is ranked by: everything under one scheme, or divisions each under its own, in the order of the editor. */
type Compared = OneScheme | { readonly scheme?: undefined; readonly divisions: readonly DivisionEvidence[] };
interface OneScheme {
  readonly scheme: SchemeEvidence;
  readonly divisions?: undefined;
}

/** The evidence of what is compared: of an edition with one division, or of one of several. */
export interface ComparedEvidence extends EditionEvidence {
  readonly edition: EditionEvidence['edition'] & OneScheme;
}

export interface EditionEvidence {
  readonly edition: Compared & {
    readonly slug: string;
    readonly name: string;
    readonly opensOn: string;
    readonly closesOn: string;
    /** When it was closed; an edition from before that was kept has none. */
    readonly closedOn?: string;
    /** What it took besides while it was open, oldest first; none where it took nothing. */
    readonly amendments?: readonly Amendment[];
    /** Slug of the edition before; null for the first. */
    readonly previous: string | null;
    readonly blindKeyDigest: string | null;
    /** Pinned versions with what they yield, by slug. */
    readonly methods: readonly PinnedMethod[];
    readonly entries: readonly EntryEvidence[];
  };
  /** Accepted and not withdrawn. */
  readonly submissions: readonly SubmissionEvidence[];
  readonly withdrawn: readonly WithdrawnEvidence[];
  /** What was put right after submissions rested on it, oldest first; none where nothing was. */
  readonly superseded?: readonly Superseded[];
  readonly instruments: readonly InstrumentEvidence[];
  readonly claims: readonly ClaimEvidence[];
  /** Closed while the edition was worked on; they enter no result. */
  readonly roundRobins?: readonly RoundRobinEvidence[];
  /** What was drawn to be tested again, and found; it enters no value, only what is known of rigs and testers. */
  readonly retests?: RetestsEvidence | undefined;
  /** Of the rigs that submissions were pulled on, up to the close of the edition, oldest first; an edition from before there were any has none. */
  readonly controlPulls?: readonly ControlPullEvidence[] | undefined;
  /** What is known of rigs and testers otherwise; goes before what the control pulls tell. */
  readonly effects?: EffectsEvidence | undefined;
}
