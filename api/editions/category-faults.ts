/** What of a scheme can never count: no version of its methods yields the series that a category is made of. Pure. */
import { isTreated, untreatedOf } from '../readings/series-needs.js';
import type { MethodSeries } from '../contract/method-series.js';
import type { InputFault } from '../platform/errors/problem.js';
import type { QuantityKind, SchemeCategory } from '../contract/endpoints/schemes.js';
import type { PinnedMethod } from '../reckoning/results/quantity.js';

/** A version that may serve, with how it finds the cross-section. */
export interface YieldingVersion extends PinnedMethod {
  readonly parameters: { readonly areaFrom: 'circle' | 'ellipse' | 'solid' | null };
}

const KIND_OF: Readonly<Record<QuantityKind, MethodSeries['kind']>> = {
  breakingForce: 'breakingForce',
  diameter: 'diameterAlongStations',
  outOfRoundness: 'diameterAlongStations',
  linearDensity: 'linearDensity',
  apparentStress: 'breakingForce',
  retention: 'breakingForce',
  strengthHonesty: 'breakingForce',
};

interface Sought {
  readonly category: string;
  readonly pointer: string;
  readonly method: string;
  readonly series: string;
  readonly kind: MethodSeries['kind'];
}

/**
 * @param versions that may serve: those on record when a scheme is made, those that are pinned when an edition is
 * @param whatToDo ends the sentence about a method of which there is none
 */
export function categoryFaults(
  categories: readonly SchemeCategory[],
  versions: readonly YieldingVersion[],
  whatToDo: string,
): InputFault[] {
  return categories.flatMap(({ code: category, quantity, method, series, section }, index) => {
    const pointer = `/rules/categories/${index}`;
    const own = { category, pointer, method, series, kind: KIND_OF[quantity] };
    const over = section && { category, pointer: `${pointer}/section`, ...section, kind: 'diameterAlongStations' as const };
    const faults = [own, ...(over ? [over] : [])].flatMap((sought) => seriesFaults(sought, versions, whatToDo));
    if (faults.length > 0) return faults;
    return [...(quantity === 'retention' ? retentionFaults(own, versions) : []), ...(over ? sectionFaults(over, versions) : [])];
  });
}

function seriesFaults(
  { category, pointer, method, series, kind }: Sought,
  versions: readonly YieldingVersion[],
  whatToDo: string,
): InputFault[] {
  const ofMethod = versions.filter(({ slug }) => slug === method);
  if (ofMethod.length === 0)
    return [{ pointer: `${pointer}/method`, code: 'no_version', detail: `${category} needs the method ${method}; ${whatToDo}.` }];
  const found = ofMethod.flatMap((version) => version.series.filter(({ code }) => code === series));
  if (found.some((one) => one.kind === kind)) return [];
  const yields = [...new Set(ofMethod.flatMap((version) => version.series.map((one) => `${one.code} (${one.kind})`)))].join(', ');
  const detail = `${category} needs a series "${series}" of the kind ${kind} from ${method}, which yields ${yields}. Name one of these, or a version that yields it.`;
  return [{ pointer: `${pointer}/series`, code: found.length > 0 ? 'other_kind' : 'unknown_series', detail }];
}

function retentionFaults({ category, pointer, method, series }: Sought, versions: readonly YieldingVersion[]): InputFault[] {
  const yielding = versions.filter((version) => version.slug === method && version.series.some(({ code }) => code === series));
  const treated = yielding.filter((version) => version.series.some((one) => one.code === series && isTreated(one)));
  if (treated.some((version) => untreatedOf(version.series))) return [];
  const detail =
    treated.length === 0
      ? `${category} is what a treatment leaves, and ${series} of ${method} is untreated. Name the treated series.`
      : `${category} divides ${series} of ${method} by untreated pulls, and its version has no such series. Add a version that pulls untreated specimens too.`;
  return [{ pointer: `${pointer}/series`, code: treated.length === 0 ? 'not_treated' : 'nothing_to_divide_by', detail }];
}

function sectionFaults({ category, pointer, method, series }: Sought, versions: readonly YieldingVersion[]): InputFault[] {
  const measuring = versions.filter((version) => version.slug === method && version.series.some(({ code }) => code === series));
  if (measuring.some(hasSection)) return [];
  const detail = `${category} is a force over a cross-section, and ${method} does not say how its diameters make one. Set areaFrom in a version of it to circle or ellipse.`;
  return [{ pointer: `${pointer}/method`, code: 'no_section', detail }];
}

/** The solid section follows from mass and length of the same submission. */
const hasSection = ({ parameters: { areaFrom }, series }: YieldingVersion): boolean =>
  areaFrom === 'solid' ? series.some(({ kind }) => kind === 'linearDensity') : areaFrom !== null;
