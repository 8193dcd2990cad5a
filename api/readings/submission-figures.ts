/** The figures of one submission: what its counted specimens say, in units named in each field. Pure. */
import { circleAreaMm2, ellipseAreaMm2, solidAreaMm2 } from '../measurement/figures/cross-section.js';
import { diameterMm, outOfRoundnessPercent } from '../measurement/figures/diameter.js';
import type { DiameterStation } from '../measurement/figures/diameter.js';
import { retentionFigures } from '../measurement/figures/retention.js';
import { linearDensityTex } from '../measurement/figures/strength.js';
import { meanConfidenceInterval } from '../measurement/summary/confidence-interval.js';
import { summarise } from '../measurement/summary/summarise.js';
import type { ReadingRole } from '../contract/submission-content.js';
import type { SpecimenInSi } from './readings-si.js';

/** Mean with what tells how sure it is; interval null for a single reading. */
export interface Spread {
  readonly n: number;
  readonly mean: number;
  readonly sd: number | null;
  readonly cvPercent: number | null;
  readonly min: number;
  readonly max: number;
  readonly median: number;
  readonly low95: number | null;
  readonly high95: number | null;
}

export interface SubmissionFigures {
  readonly validSpecimens: number;
  readonly invalidSpecimens: number;
  readonly gripBreakSharePercent: number;
  /** Straight pull [N]. */
  readonly breakingForceN: Spread | null;
  /** Knotted or abraded [N]. */
  readonly treatedForceN: Spread | null;
  readonly retentionPercent: { readonly value: number; readonly low95: number | null; readonly high95: number | null } | null;
  /** One value a specimen, each the mean of its stations [mm]. */
  readonly diameterMm: Spread | null;
  readonly outOfRoundnessPercent: Spread | null;
  /** [mm²] as the method version chooses; null where it does not. */
  readonly areaMm2: number | null;
  readonly linearDensityTex: Spread | null;
}

export type AreaRule = 'circle' | 'ellipse' | 'solid' | null;

/** Values of one role over the counted specimens of a condition, in SI. */
export function countedValues(
  specimens: readonly SpecimenInSi[],
  role: ReadingRole,
  condition: 'untreated' | 'treated' = 'untreated',
): number[] {
  return specimens
    .filter((specimen) => specimen.state === 'valid' && specimen.condition === condition)
    .flatMap((specimen) => specimen.readings.filter((reading) => reading.role === role).map((reading) => Number(reading.valueSi)));
}

/**
 * Computes the figures; specimens that are invalid or set aside do not count.
 * @param specimens with readings in SI
 * @param areaRule how the cross-section is found
 * @param densityGPerCm3 density of the solid material [g/cm³], for the rule "solid"
 */
export function computeSubmissionFigures(
  specimens: readonly SpecimenInSi[],
  areaRule: AreaRule,
  densityGPerCm3: number,
): SubmissionFigures {
  const straight = countedValues(specimens, 'breakingForce');
  const treated = countedValues(specimens, 'breakingForce', 'treated');
  const counted = specimens.filter(({ state }) => state === 'valid');
  const bySpecimen = counted.map(stationsOf).filter((stations) => stations.length > 0);
  const density = spreadOf(counted.flatMap(linearDensityOf));
  const gripBreaks = specimens.filter(({ reason }) => reason === 'brokeAtGrip').length;
  return {
    validSpecimens: counted.length,
    invalidSpecimens: specimens.filter(({ state }) => state === 'invalid').length,
    gripBreakSharePercent: (100 * gripBreaks) / Math.max(1, specimens.length),
    breakingForceN: spreadOf(straight),
    treatedForceN: spreadOf(treated),
    retentionPercent: retentionOf(treated, straight),
    diameterMm: spreadOf(bySpecimen.map(diameterMm)),
    outOfRoundnessPercent: spreadOf(bySpecimen.map(outOfRoundnessPercent)),
    areaMm2: areaOf(areaRule, bySpecimen.flat(), density?.mean ?? null, densityGPerCm3),
    linearDensityTex: density,
  };
}

function spreadOf(values: readonly number[]): Spread | null {
  if (values.length === 0) return null;
  const { n, mean, sd, cvPercent, min, max, median } = summarise(values);
  const interval = n > 1 ? meanConfidenceInterval(values) : null;
  return { n, mean, sd, cvPercent, min, max, median, low95: interval?.low ?? null, high95: interval?.high ?? null };
}

function stationsOf({ readings }: SpecimenInSi): DiameterStation[] {
  const at = (role: ReadingRole) =>
    new Map(readings.filter((reading) => reading.role === role).map((reading) => [reading.station, 1000 * Number(reading.valueSi)]));
  const [wide, narrow] = [at('wideDiameter'), at('narrowDiameter')];
  return [...wide].flatMap(([station, wideMm]) => {
    const narrowMm = narrow.get(station);
    return narrowMm === undefined ? [] : [{ wideMm, narrowMm }];
  });
}

function linearDensityOf({ readings }: SpecimenInSi): number[] {
  const value = (role: ReadingRole) => readings.find((reading) => reading.role === role)?.valueSi;
  const [massKg, lengthM] = [value('mass'), value('length')];
  return massKg === undefined || lengthM === undefined ? [] : [linearDensityTex(1000 * Number(massKg), Number(lengthM))];
}

function retentionOf(treatedN: readonly number[], straightN: readonly number[]): SubmissionFigures['retentionPercent'] {
  if (treatedN.length < 2 || straightN.length < 2) return null;
  const { retentionPercent, interval } = retentionFigures(treatedN, straightN);
  const isBounded = interval.kind === 'bounded';
  return { value: retentionPercent, low95: isBounded ? 100 * interval.low : null, high95: isBounded ? 100 * interval.high : null };
}

function areaOf(rule: AreaRule, stations: readonly DiameterStation[], tex: number | null, densityGPerCm3: number): number | null {
  if (rule === 'solid') return tex === null ? null : solidAreaMm2(tex, densityGPerCm3);
  if (rule === null || stations.length === 0) return null;
  return rule === 'circle' ? circleAreaMm2(diameterMm(stations)) : ellipseAreaMm2(stations);
}
