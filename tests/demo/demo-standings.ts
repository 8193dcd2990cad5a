import { rigOf } from '../../api/editions/compute-edition.js';
import { computeResults } from '../../api/editions/results.js';
import type { Result } from '../../api/editions/results.js';
import type { Quantity } from '../../api/editions/editions.schemas.js';
import { computeStandings } from '../../api/measurement/ranking/standings.js';
import type { Standings } from '../../api/measurement/ranking/standings.js';
import { roundHalfEven } from '../../api/measurement/units/round-half-even.js';
import { toSpecimensInSi } from '../../api/submissions/readings-si.js';
import { submissionContent } from '../../api/submissions/submission-content.js';
import { computeSubmissionFigures } from '../../api/submissions/submission-figures.js';
import type { SubmissionFigures } from '../../api/submissions/submission-figures.js';
import type { DemoContent } from '../../prisma/seed/bench/demo-content.js';
import { demoClaims } from '../../prisma/seed/house/claims.js';
import { demoInstruments } from '../../prisma/seed/house/instruments.js';
import { demoScheme } from '../../prisma/seed/house/scheme.js';
import type { DemoVariant } from '../../prisma/seed/house/variants.js';
import type { DemoHandIn } from '../../prisma/seed/season/hand-in.js';
import type { SeasonPlan } from '../../prisma/seed/season/season-plan.js';

const NEWTONS: Readonly<Record<string, number>> = { lbf: 4.4482216152605, kgf: 9.80665 };

/** Rated strength on the label [N]. */
export function claimedForceN(seed: number, variant: DemoVariant): number {
  const printed = demoClaims(seed, variant).find(({ quantity }) => quantity === 'breakingForce')!.printed;
  return Number(printed.text) * NEWTONS[printed.unit]!;
}

/** Figures of a submission, without the specimens that its reviewer set aside. */
export function figuresOf(content: DemoContent, setAside: readonly number[] = []): SubmissionFigures {
  const { specimens } = submissionContent.parse({ ...content, spool: 'AAAAAAA' });
  const counted = toSpecimensInSi(specimens).filter(({ number }) => !setAside.includes(number));
  return computeSubmissionFigures(counted, content.method === 'diameter' || content.method === 'straight-pull' ? 'circle' : null, 1);
}

/** What counts in the end of a submission; null where nothing does. */
function countedFigures({ content, review, withdrawal }: DemoHandIn): SubmissionFigures | null {
  if (withdrawal || !review || review.decision === 'refused') return null;
  if (review.decision === 'returned') return review.reply && figuresOf(review.reply.corrected);
  return figuresOf(
    content,
    review.setAside.map(({ specimen }) => specimen),
  );
}

/**
 * Results of a season by the very functions that the program uses.
 * @param spoolsAs spool → variant that it counts for, where that is not what its box says
 */
export function resultsOf(
  seed: number,
  { entries, handIns }: SeasonPlan,
  spoolsAs: Readonly<Record<string, string>> = {},
): ReadonlyMap<string, ReadonlyMap<Quantity, Result>> {
  const counted = handIns.flatMap((handIn) => {
    const figures = countedFigures(handIn);
    const { key, variant, spool, method, tester } = handIn.task;
    return figures
      ? [{ reference: key, variant: spoolsAs[spool] ?? variant, method, tester: String(tester), figures, ...rigOn(handIn.content) }]
      : [];
  });
  const slugs = entries.map(({ slug }) => slug);
  return computeResults(slugs, counted, new Map(entries.map((entry) => [entry.slug, claimedForceN(seed, entry)]))).results;
}

/** The instrument that took the readings, with its certificate of the day; no display is coarse enough here to matter. */
function rigOn({ instruments, benchDay }: DemoContent) {
  const used = instruments.map((code) => ({ code, kind: demoInstruments.find((one) => one.code === code)!.kind, certificate: null }));
  const rig = rigOf({ instruments: used });
  const { calibrations } = demoInstruments.find(({ code }) => code === rig)!;
  // Two certificates may overlap; the later one is the one that holds.
  const valid = calibrations.filter(({ validFrom, validUntil }) => validFrom <= benchDay && benchDay <= validUntil).at(-1)!;
  const relative = Number(valid.expandedUncertaintyPercent) / Number(valid.coverageFactor) / 100;
  return { rig, calibration: { certificate: valid.certificate, relative }, resolution: null };
}

/** Standings of a season, exclusions observed. */
export function standingsOf(seed: number, plan: SeasonPlan, spoolsAs?: Readonly<Record<string, string>>): Standings {
  const results = resultsOf(seed, plan, spoolsAs);
  const { categories } = demoScheme.rules;
  const entries = plan.entries.map(({ slug }) => {
    const exclusion = plan.exclusions.find(({ variant }) => variant === slug);
    const values = categories.map(({ code, quantity, places }) => {
      const estimate = results.get(slug)?.get(quantity)?.estimate;
      return [code, estimate ? roundHalfEven(estimate.value, places) : null] as const;
    });
    return { id: slug, exclusion: exclusion ? { effect: exclusion.effect } : null, values: Object.fromEntries(values) };
  });
  return computeStandings({ ...demoScheme.rules, entries });
}
