import { toChartDocument } from '../rigs/chart-document.js';
import { chartsOf } from '../rigs/control-charts.js';
import { knownEffects } from '../rigs/known-effects.js';
import type { EditionQuantity } from '../results/quantity.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { RigsDocument } from '../../contract/documents/rigs-document.js';
import { headingOf } from './release-context.js';
import type { EditionContext } from './release-context.js';

/** Who and what the edition was measured with: testers and their agreement, instruments, certificates, control charts of the rigs. */
export function rigsDocument(context: EditionContext): RigsDocument {
  const { instruments, submissions } = context.evidence;
  const charts = chartsOf(context.evidence.controlPulls ?? []).map(toChartDocument);
  return {
    ...headingOf(context),
    testers: testersOf(submissions),
    agreement: agreementOf(context),
    effects: effectsOf(context),
    instruments: instruments.map(({ code, kind, name, capacity, resolution, calibrations }) => ({
      code,
      kind,
      name,
      capacity,
      resolution,
      calibrations: calibrations.map((calibration) => ({ ...calibration })),
      submissions: submissions.filter((submission) => submission.instruments.some((used) => used.code === code)).length,
      charts: charts.filter(({ instrument }) => instrument === code),
    })),
  };
}

function testersOf(submissions: EditionContext['evidence']['submissions']): RigsDocument['testers'] {
  const byName = [...Map.groupBy(submissions, ({ tester }) => tester)];
  return byName
    .map(([name, own]) => ({
      name,
      submissions: own.length,
      specimens: own.reduce((sum, { specimens }) => sum + specimens.length, 0),
      benchDays: new Set(own.map(({ benchDay }) => benchDay)).size,
    }))
    .sort((one, other) => (one.name < other.name ? -1 : 1));
}

const agreementOf = ({ computed: { quantities, spreads } }: EditionContext): RigsDocument['agreement'] =>
  [...spreads]
    .filter(([, { between }]) => between.degreesOfFreedom > 0)
    .map(([quantity, { typicalCvPercent, between }]) => ({
      quantity,
      name: wordsFor(quantities, quantity),
      specimenPercent: typicalCvPercent === null ? null : roundHalfEven(typicalCvPercent, 1),
      betweenSubmissionsPercent: roundHalfEven(between.relativePercent, 1),
      degreesOfFreedom: between.degreesOfFreedom,
    }));

const wordsFor = (quantities: readonly EditionQuantity[], key: string): string =>
  quantities.find((quantity) => quantity.key === key)?.name ?? key;

const effectsOf = ({ evidence, computed: { quantities } }: EditionContext): NonNullable<RigsDocument['effects']> =>
  Object.entries(knownEffects(evidence, evidence.edition.methods)).flatMap(([quantity, causes]) =>
    (['rig', 'tester'] as const).flatMap((cause) => {
      const known = causes[cause];
      if (!known) return [];
      const { relativeSd, degreesOfFreedom, source } = known;
      return [
        {
          quantity,
          name: wordsFor(quantities, quantity),
          cause,
          relativePercent: roundHalfEven(100 * Number(relativeSd), 2),
          degreesOfFreedom,
          source,
        },
      ];
    }),
  );
