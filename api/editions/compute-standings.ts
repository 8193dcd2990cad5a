import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import { InstrumentsReadModel } from '../instruments/instruments.read-model.js';
import { computeStandings } from '../measurement/ranking/standings.js';
import type { Standings } from '../measurement/ranking/standings.js';
import { roundHalfEven } from '../measurement/units/round-half-even.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { SubmissionsReadModel } from '../submissions/submissions.read-model.js';
import type { AcceptedSubmission } from '../submissions/submissions.read-model.js';
import { EditionsReadModel } from './editions.read-model.js';
import type { EditionForStandings } from './editions.read-model.js';
import type { Quantity } from './editions.schemas.js';
import { computeResults } from './results.js';
import type { Result } from './results.js';

/** An edition with its evidence, results and standings; entries by variant id. */
export interface ComputedEdition {
  readonly edition: EditionForStandings;
  readonly submissions: readonly AcceptedSubmission[];
  readonly instruments: Awaited<ReturnType<InstrumentsReadModel['byCodes']>>;
  readonly claims: Awaited<ReturnType<CatalogueReadModel['claimsOf']>>;
  readonly results: ReadonlyMap<string, ReadonlyMap<Quantity, Result>>;
  readonly standings: Standings;
}

const MEASURING_KINDS = ['loadFrame', 'forceGauge', 'opticalGauge', 'micrometer', 'balance'];

/** The instrument that stands for the rig of a submission. */
export function rigOf(submission: AcceptedSubmission): string {
  const byKind = MEASURING_KINDS.flatMap((kind) => submission.instruments.filter((instrument) => instrument.kind === kind));
  return (byKind[0] ?? submission.instruments[0])?.code ?? 'none';
}

/** Computes an edition's results and standings from what is accepted now. Reads only. */
@Injectable()
export class ComputeStandings {
  constructor(
    private readonly editions: EditionsReadModel,
    private readonly submissions: SubmissionsReadModel,
    private readonly catalogue: CatalogueReadModel,
    private readonly instruments: InstrumentsReadModel,
  ) {}

  async run(slug: string): Promise<ComputedEdition> {
    const edition = await this.editions.forStandings(slug);
    if (!edition) throw new Problem(platformProblems['request/not-found'], `No edition is called ${slug}.`);
    const submissions = await this.submissions.acceptedInEdition(edition.id);
    const variantIds = edition.entries.map(({ variantId }) => variantId);
    const claims = await this.catalogue.claimsOf(variantIds);
    const instruments = await this.instruments.byCodes([
      ...new Set(submissions.flatMap((submission) => submission.instruments.map(({ code }) => code))),
    ]);
    const results = new Map(variantIds.map((variantId) => [variantId, resultsOf(variantId, submissions, claims, instruments)]));
    return { edition, submissions, instruments, claims, results, standings: standingsOf(edition, results) };
  }
}

function resultsOf(
  variantId: string,
  submissions: ComputedEdition['submissions'],
  claims: ComputedEdition['claims'],
  instruments: ComputedEdition['instruments'],
) {
  const own = submissions.filter((submission) => submission.variantId === variantId);
  const claim = claims.find((candidate) => candidate.variantId === variantId && candidate.quantity === 'breakingForce');
  const asResults = own.map((submission) => {
    const rig = rigOf(submission);
    return {
      variantId,
      method: submission.method.slug,
      testerId: submission.testerId,
      rig,
      figures: submission.figures,
      calibrationRelative: calibrationOf(submission, rig, instruments),
    };
  });
  return computeResults(asResults, claim ? Number(claim.valueSi) : null);
}

/** Relative standard uncertainty of the certificate that was valid on the bench day [1]: U / k. */
function calibrationOf(submission: AcceptedSubmission, rig: string, instruments: ComputedEdition['instruments']): number {
  const certificate = submission.instruments.find(({ code }) => code === rig)?.certificate;
  const calibration = instruments.find(({ code }) => code === rig)?.calibrations.find((candidate) => candidate.certificate === certificate);
  return calibration ? Number(calibration.expandedUncertaintyPercent) / Number(calibration.coverageFactor) / 100 : 0;
}

function standingsOf(edition: EditionForStandings, results: ComputedEdition['results']): Standings {
  const { categories, combine, countPlaces, tieBreak } = edition.scheme.rules;
  const entries = edition.entries.map(({ variantId, exclusion }) => ({
    id: variantId,
    exclusion: exclusion && { effect: exclusion.effect },
    values: Object.fromEntries(
      categories.map(({ code, quantity, places }) => {
        const estimate = results.get(variantId)?.get(quantity)?.estimate;
        return [code, estimate ? roundHalfEven(estimate.value, places) : null];
      }),
    ),
  }));
  return computeStandings({ categories, combine, countPlaces, tieBreak, entries });
}
