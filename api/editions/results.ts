/** The results of an edition: each variant's estimates from its accepted submissions. Pure. */
import type { SubmissionFigures } from '../submissions/submission-figures.js';
import { tQuantile } from '../measurement/distributions/t-distribution.js';
import type { Quantity } from './editions.schemas.js';
import { combineSubmissions, productOfPowers, widen } from './estimate.js';
import type { Estimate, Point } from './estimate.js';

/** An accepted submission as far as results need it. */
export interface ResultSubmission {
  readonly method: string;
  readonly tester: string;
  readonly rig: string;
  readonly figures: SubmissionFigures;
  /** Relative standard uncertainty of the calibration of its rig [1]. */
  readonly calibrationRelative: number;
}

export interface Result {
  readonly quantity: Quantity;
  /** In the quantity's SI unit of the scheme: MPa, N, %, mm, tex. */
  readonly estimate: Estimate;
  readonly specimens: number;
  readonly submissions: number;
  readonly testers: number;
  readonly rigs: number;
  readonly note: string | null;
}

interface Evidence {
  readonly estimate: Estimate;
  readonly from: readonly ResultSubmission[];
}

/**
 * Computes every quantity that a variant's accepted submissions allow.
 * @param submissions accepted submissions of one variant
 * @param claimedForceN rated strength on the label [N]; null without such a claim
 */
export function computeResults(submissions: readonly ResultSubmission[], claimedForceN: number | null): Map<Quantity, Result> {
  const by = (method: string) => submissions.filter((submission) => submission.method === method);
  const force = evidence(by('straight-pull'), ({ breakingForceN }) => spreadPoint(breakingForceN));
  const diameter = evidence(by('diameter'), ({ diameterMm }) => spreadPoint(diameterMm));
  const found: [Quantity, Evidence | null][] = [
    ['breakingForce', force],
    ['diameter', diameter],
    ['outOfRoundness', evidence(by('diameter'), ({ outOfRoundnessPercent }) => spreadPoint(outOfRoundnessPercent), true)],
    ['linearDensity', evidence(by('linear-density'), ({ linearDensityTex }) => spreadPoint(linearDensityTex))],
    ['apparentStress', stressOf(force, diameter, submissions)],
    ['knotRetention', evidence(by('named-knot'), retentionPoint, true)],
    ['abrasionRetention', evidence(by('abrasion'), retentionPoint, true)],
    ['strengthHonesty', claimedForceN === null || !force ? null : { ...force, estimate: scaled(force.estimate, 100 / claimedForceN) }],
  ];
  return new Map(found.flatMap(([quantity, entry]) => (entry ? [[quantity, toResult(quantity, entry)] as const] : [])));
}

const scaled = ({ value, standardUncertainty, degreesOfFreedom }: Estimate, factor: number): Estimate => ({
  value: value * factor,
  standardUncertainty: standardUncertainty === null ? null : standardUncertainty * factor,
  degreesOfFreedom,
});

function evidence(
  submissions: readonly ResultSubmission[],
  point: (figures: SubmissionFigures) => Point | null,
  isRatio = false,
): Evidence | null {
  const from = submissions.filter(({ figures }) => point(figures) !== null);
  const points = from.flatMap(({ figures }) => point(figures) ?? []);
  if (points.length === 0) return null;
  const combined = combineSubmissions(points);
  const largest = Math.max(...from.map(({ calibrationRelative }) => calibrationRelative));
  return { estimate: isRatio ? combined : widen(combined, [largest]), from };
}

function spreadPoint(spread: SubmissionFigures['breakingForceN']): Point | null {
  return (
    spread && {
      mean: spread.mean,
      standardUncertainty: spread.sd === null ? null : spread.sd / Math.sqrt(spread.n),
      degreesOfFreedom: spread.n - 1,
    }
  );
}

/** A retention is a ratio of two pulls on one rig, so its interval is Fieller's and the rig's calibration cancels. */
function retentionPoint({ retentionPercent, breakingForceN, treatedForceN }: SubmissionFigures): Point | null {
  if (!retentionPercent || !breakingForceN || !treatedForceN) return null;
  const degreesOfFreedom = breakingForceN.n + treatedForceN.n - 2;
  const { value, low95, high95 } = retentionPercent;
  const isBounded = low95 !== null && high95 !== null;
  return {
    mean: value,
    standardUncertainty: isBounded ? (high95 - low95) / (2 * tQuantile(0.975, degreesOfFreedom)) : null,
    degreesOfFreedom,
  };
}

/** Force over the measured cross-section; the section's relative uncertainty is twice the diameter's. */
function stressOf(force: Evidence | null, diameter: Evidence | null, submissions: readonly ResultSubmission[]): Evidence | null {
  const areas = submissions.flatMap(({ figures }) => figures.areaMm2 ?? []);
  if (!force || !diameter || areas.length === 0) return null;
  const areaMm2 = areas.reduce((sum, area) => sum + area, 0) / areas.length;
  const shape = areaMm2 / diameter.estimate.value ** 2;
  const estimate = productOfPowers(
    [
      { estimate: force.estimate, power: 1 },
      { estimate: diameter.estimate, power: -2 },
    ],
    1 / shape,
  );
  return { estimate, from: force.from };
}

function toResult(quantity: Quantity, { estimate, from }: Evidence): Result {
  const isRetention = quantity === 'knotRetention' || quantity === 'abrasionRetention';
  return {
    quantity,
    estimate,
    specimens: from.reduce((sum, { figures }) => sum + countOf(quantity, figures), 0),
    submissions: from.length,
    testers: new Set(from.map(({ tester }) => tester)).size,
    rigs: new Set(from.map(({ rig }) => rig)).size,
    note: isRetention && estimate.value > 100 ? 'Above 100 %: reported as found; straight and treated pulls scatter.' : null,
  };
}

function countOf(quantity: Quantity, figures: SubmissionFigures): number {
  if (quantity === 'diameter' || quantity === 'outOfRoundness') return figures.diameterMm?.n ?? 0;
  if (quantity === 'linearDensity') return figures.linearDensityTex?.n ?? 0;
  return (figures.breakingForceN?.n ?? 0) + (figures.treatedForceN?.n ?? 0);
}
