/** Inputs of a release invented from a number: a small house with its testers, rigs, spools and readings. Nothing is fetched, nothing is stored. */
import type { ComparedEvidence, EditionEvidence } from '../../api/reckoning/evidence/edition-evidence.js';
import { schemeRules } from '../../api/contract/endpoints/schemes.js';
import { parseQuantity } from '../../api/measurement/units/parse-quantity.js';
import type { VariantName } from '../../api/contract/documents/release-documents.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import type { SpecimenInSi } from '../../api/readings/readings-si.js';
import type { SubmissionEvidence } from '../../api/reckoning/evidence/submission-evidence.js';
import { Draws } from './invented/draws.js';
import { inventVariants } from './invented/invent-variants.js';
import { METHOD_SERIES } from './method-series.js';
import { METHOD_VERSION, SCHEME } from './season.js';

export interface InventedSize {
  readonly variants: number;
  readonly testers: number;
  readonly rigs: number;
  readonly specimens: number;
}

const TESTERS = ['A. Fenn', 'B. Holm', 'C. Reed', 'D. Skerry', 'F. Tarn'];
const COMBINING = ['sumOfPlaces', 'weightedSumOfPlaces', 'meanStandardScore', 'pairwiseWins'] as const;
const METHODS = ['abrasion', 'diameter', 'named-knot', 'straight-pull'] as const;
type Method = (typeof METHODS)[number];

/** Small sizes as they come, for many editions in little time. */
export function sizeBy(seed: number): InventedSize {
  const draws = new Draws(seed);
  const between = (low: number, high: number) => low + Math.floor(draws.uniform() * (high - low + 1));
  return { variants: between(3, 8), testers: between(2, 5), rigs: between(1, 3), specimens: between(3, 6) };
}

/** The same number and size give the same inputs. */
export function inventInputs(seed: number, size: InventedSize = sizeBy(seed)): ReleaseInputs & { readonly evidence: ComparedEvidence } {
  const draws = new Draws(seed * 7919 + 1);
  const variants = inventVariants(size.variants).toSorted((one, other) => (one.slug < other.slug ? -1 : 1));
  const submissions = variants.flatMap((variant, index) => submissionsOf(variant, index, size, draws));
  const rules = schemeRules.parse({ ...SCHEME.rules, combine: draws.pick(COMBINING), tieBreak: draws.pick(['none', 'mostFirsts']) });
  const edition: ComparedEvidence['edition'] = {
    slug: '2026',
    name: 'Winter 2026',
    opensOn: '2025-10-01',
    closesOn: '2026-02-15',
    previous: null,
    blindKeyDigest: null,
    scheme: { slug: SCHEME.slug, number: SCHEME.number, name: SCHEME.name, words: SCHEME.words, rules },
    methods: METHODS.map((slug) => ({ slug, number: 1, series: METHOD_SERIES[slug], reproducibilityPercent: 2 })),
    entries: variants.map(({ slug }, index) => ({
      variant: slug,
      exclusion:
        index === 1 && draws.uniform() < 0.3
          ? { reasonCode: 'notObtainable', words: 'No shop had it in autumn.', effect: draws.pick(['closedUp', 'shownUnplaced']) }
          : null,
    })),
  };
  return {
    house: 'North Quay Line Trials',
    licence: { name: 'CC-BY-4.0', title: 'Creative Commons Attribution 4.0', path: 'https://creativecommons.org/licenses/by/4.0/' },
    isDemo: true,
    revision: 1,
    publishedAt: '2026-03-01T09:00:00.000Z',
    softwareVersion: '0.1.0',
    previousDigest: null,
    evidence: {
      edition,
      submissions,
      withdrawn: [],
      instruments: instrumentsOf(size.rigs),
      claims: variants.map((variant) => claimOf(variant, draws)),
    },
    variants,
    methods: METHODS.map((slug) => {
      const { series: _, ...version } = METHOD_VERSION;
      return { ...version, checks: {}, slug, name: slug, effectiveFrom: '2025-10-01' } as ReleaseInputs['methods'][number];
    }),
    checks: [],
    blindKey: null,
    spools: variants.map(({ slug }, index) => ({
      code: codeOf(index),
      variant: slug,
      source: 'bought',
      obtainedOn: '2025-09-20',
      place: 'A shop in the harbour',
      lot: null,
      lengthM: '150',
      reidentifications: [],
    })),
    earlier: [],
    correction: null,
  };
}

const codeOf = (index: number): string => `SPOOL${String(index).padStart(3, '0')}`;

function instrumentsOf(rigs: number): EditionEvidence['instruments'] {
  const certificate = (code: string, expandedUncertaintyPercent: string) => [
    {
      certificate: `C-${code}`,
      validFrom: '2025-09-01',
      validUntil: '2026-08-31',
      correctionPercent: '0',
      expandedUncertaintyPercent,
      coverageFactor: '2',
    },
  ];
  return [
    {
      code: 'M1',
      kind: 'micrometer',
      name: 'Micrometer',
      capacity: { text: '25', unit: 'mm' },
      resolution: { text: '0.001', unit: 'mm' },
      calibrations: certificate('M1', '0.6'),
    },
    ...Array.from({ length: rigs }, (_, i) => `R${i + 1}`).map((code) => ({
      code,
      kind: 'forceGauge' as const,
      name: `Rig ${code}`,
      capacity: { text: '500', unit: 'N' },
      resolution: { text: '0.01', unit: 'N' },
      calibrations: certificate(code, '0.8'),
    })),
  ];
}

function claimOf({ slug, ratedStrength }: VariantName, draws: Draws): EditionEvidence['claims'][number] {
  const printed = ratedStrength ? { text: ratedStrength.value, unit: ratedStrength.unit } : { text: '20', unit: 'lbf' };
  return {
    variant: slug,
    quantity: 'breakingForce',
    basis: draws.pick(['average', 'notStated']),
    printed,
    valueSi: parseQuantity(printed.text, printed.unit).si,
    seenOn: '2025-09-20',
    source: 'Printed on the box',
  };
}

/** Straight pull twice by two testers, every other method once. */
function submissionsOf(variant: VariantName, index: number, size: InventedSize, draws: Draws): SubmissionEvidence[] {
  const forceN = 60 + 90 * draws.uniform();
  const kept = { 'named-knot': 0.5 + 0.3 * draws.uniform(), abrasion: 0.6 + 0.35 * draws.uniform() };
  const diameterMm = 0.15 + 0.2 * draws.uniform();
  const plan: readonly Method[] = ['straight-pull', 'straight-pull', 'named-knot', 'abrasion', 'diameter'];
  return plan.map((method, k) => {
    const rig = method === 'diameter' ? 'M1' : `R${((index + k) % size.rigs) + 1}`;
    const off = 1 + 0.01 * draws.normal(0, 1);
    const pull = (share: number) => draws.normal(forceN * share * off, 0.05 * forceN * share).toFixed(2);
    const specimens =
      method === 'diameter'
        ? pieces(size.specimens, 'untreated', () => diameters(diameterMm, draws))
        : [
            ...pieces(size.specimens, 'untreated', () => [reading('breakingForce', null, pull(1), 'N')]),
            ...(method === 'straight-pull'
              ? []
              : pieces(size.specimens, 'treated', () => [reading('breakingForce', null, pull(kept[method]), 'N')], size.specimens)),
          ];
    return {
      reference: `S-${String(index * 10 + k).padStart(5, '0')}`,
      revision: 1,
      variant: variant.slug,
      spool: codeOf(index),
      method: { slug: method, number: 1 },
      areaFrom: method === 'diameter' || method === 'straight-pull' ? 'circle' : null,
      densityGPerCm3: '0.97',
      tester: TESTERS[(index + k) % size.testers]!,
      reviewer: 'R. Dunlin',
      benchDay: `2026-01-${String(10 + k).padStart(2, '0')}`,
      isBlind: true,
      instruments: [{ code: rig, kind: rig === 'M1' ? 'micrometer' : 'forceGauge', certificate: `C-${rig}` }],
      temperatureC: '20.5',
      humidityPercent: '55',
      specimens,
      findings: [],
    };
  });
}

const reading = (role: SpecimenInSi['readings'][number]['role'], station: number | null, text: string, unit: string) => {
  const { si, siUnit } = parseQuantity(text, unit);
  return { role, station, enteredText: text, enteredUnit: unit, valueSi: si, siUnit };
};

const diameters = (mm: number, draws: Draws): SpecimenInSi['readings'] =>
  [1, 2].flatMap((station) => {
    const wide = draws.normal(mm * 1.02, 0.004 * mm);
    return [reading('wideDiameter', station, wide.toFixed(3), 'mm'), reading('narrowDiameter', station, (wide * 0.96).toFixed(3), 'mm')];
  });

const pieces = (count: number, condition: 'untreated' | 'treated', readings: () => SpecimenInSi['readings'], after = 0): SpecimenInSi[] =>
  Array.from({ length: count }, (_, i) => ({ number: after + i + 1, condition, state: 'valid', reason: null, readings: readings() }));
