import { schemeRules } from '../../api/contract/endpoints/schemes.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import type { ComparedEvidence } from '../../api/reckoning/evidence/edition-evidence.js';
import type { SubmissionEvidence } from '../../api/reckoning/evidence/submission-evidence.js';

/** What each variant keeps with the second knot against the first, in turn: enough to rank them otherwise. */
const AGAINST_THE_FIRST = [1.5, 0.9, 1.2, 1.05, 0.8];

/** The same inputs with a second knot, a method and a category of its own. */
export function withTwoKnots<Inputs extends ReleaseInputs & { readonly evidence: ComparedEvidence }>(inputs: Inputs): Inputs {
  const { evidence, methods } = inputs;
  const { edition, submissions } = evidence;
  const { rules } = edition.scheme;
  const palomar = rules.categories.find(({ method }) => method === 'named-knot')!;
  const fg = { ...palomar, code: 'fg', name: 'Knot retention, FG', method: 'fg-knot' };
  const knotted = edition.methods.find(({ slug }) => slug === 'named-knot')!;
  const series = knotted.series.map((one) =>
    one.kind === 'breakingForce' && one.treatment ? { ...one, treatment: { ...one.treatment, name: 'FG' } } : one,
  );
  const version = methods.find(({ slug }) => slug === 'named-knot')!;
  const tied = submissions.filter(({ method }) => method.slug === 'named-knot').map(asSecondKnot);
  return {
    ...inputs,
    methods: [...methods, { ...version, slug: 'fg-knot', name: 'FG knot' }],
    evidence: {
      ...evidence,
      submissions: [...submissions, ...tied],
      edition: {
        ...edition,
        scheme: { ...edition.scheme, rules: schemeRules.parse({ ...rules, categories: [...rules.categories, fg] }) },
        methods: [...edition.methods, { slug: 'fg-knot', number: 1, series, reproducibilityPercent: 2 }],
      },
    },
  };
}

function asSecondKnot(submission: SubmissionEvidence, index: number): SubmissionEvidence {
  const share = AGAINST_THE_FIRST[index % AGAINST_THE_FIRST.length]!;
  return {
    ...submission,
    reference: submission.reference.replace('S-', 'F-'),
    method: { slug: 'fg-knot', number: 1 },
    specimens: submission.specimens.map((specimen) => ({
      ...specimen,
      readings: specimen.readings.map((reading) => {
        if (specimen.condition === 'untreated') return reading;
        const enteredText = (Number(reading.enteredText) * share).toFixed(2);
        return { ...reading, enteredText, valueSi: String(Number(enteredText)) };
      }),
    })),
  };
}
