import { demoTesters } from '../../prisma/seed/demo-accounts.js';
import type { ControlPullEvidence } from '../../api/reckoning/evidence/control-pull-evidence.js';
import { retestedIn, rigOf } from '../../api/reckoning/standings/compute-edition.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import type { EffectsEvidence } from '../../api/reckoning/evidence/effects-evidence.js';
import type { SpreadsEvidence } from '../../api/reckoning/evidence/effects-evidence.js';
import { spreadsBefore, spreadsFound } from '../../api/reckoning/rigs/season-spreads.js';
import { knownEffects } from '../../api/reckoning/rigs/known-effects.js';
import { computeResults } from '../../api/reckoning/results/results.js';
import type { EditionResults, Elsewhere } from '../../api/reckoning/results/results.js';
import { keyOf, quantitiesOf } from '../../api/reckoning/results/quantity.js';
import type { PinnedMethod } from '../../api/reckoning/results/quantity.js';
import { computeStandings } from '../../api/measurement/ranking/places/standings.js';
import type { Standings } from '../../api/measurement/ranking/places/standings.js';
import { parseQuantityAs } from '../../api/measurement/units/parse-quantity-as.js';
import { roundHalfEven } from '../../api/measurement/units/round-half-even.js';
import type { RoundRobinEvidence } from '../../api/reckoning/evidence/round-robin-evidence.js';
import { toSpecimensInSi } from '../../api/readings/readings-si.js';
import { submissionContent } from '../../api/contract/submission-content.js';
import { computeSubmissionFigures } from '../../api/readings/submission-figures.js';
import type { SubmissionFigures } from '../../api/readings/submission-figures.js';
import { baselinePullsOf, controlPullsOf } from '../../prisma/seed/bench/control-pulls.js';
import type { DemoContent } from '../../prisma/seed/bench/demo-content.js';
import { roundRobinPulls } from '../../prisma/seed/bench/round-robin-pulls.js';
import type { Demo } from '../../prisma/seed/demo.js';
import { demoClaims } from '../../prisma/seed/house/claims.js';
import { demoControlLines } from '../../prisma/seed/house/control-lines.js';
import { demoInstruments } from '../../prisma/seed/house/instruments.js';
import { demoDivisions, demoScheme, demoStrandScheme } from '../../prisma/seed/house/scheme.js';
import { demoMethods } from '../../prisma/seed/methods/demo-methods.js';
import { takes } from '../../api/contract/division.js';
import type { PlannedDivision } from '../../api/contract/endpoints/editions.js';
import { methodVersionRequest } from '../../api/contract/endpoints/methods.js';
import type { DemoVariant } from '../../prisma/seed/house/variants.js';
import { MAKES } from '../../prisma/seed/model/makes.js';
import type { DemoHandIn } from '../../prisma/seed/season/hand-in.js';
import type { SeasonPlan } from '../../prisma/seed/season/season-plan.js';
import { ROUND_ROBIN } from '../../prisma/seed/season/story.js';

/** The series are the same in every version of a demo method. */
const PINNED = demoMethods.map(({ slug, versions }): PinnedMethod => {
  const { number, series, parameters } = methodVersionRequest.parse(versions.at(-1));
  return { slug, number, series, reproducibilityPercent: parameters.reproducibilityPercent };
});
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
 * What a season shows, by the very functions that the program uses.
 * @param spoolsAs spool → variant that it counts for, where that is not what its box says
 * @param elsewhere what re-tests and earlier seasons tell of rigs, testers and spools; where nothing is said, what the seasons before found
 */
export const seasonOf = (
  demo: Demo,
  plan: SeasonPlan,
  spoolsAs: Readonly<Record<string, string>> = {},
  elsewhere: Elsewhere = { before: spreadsBefore(seasonsBefore(demo, plan).map((one) => ({ spreads: spreadsOf(demo, one) }))) },
): EditionResults => computed(demo, plan, spoolsAs, elsewhere);

export const resultsOf = (...asked: Parameters<typeof seasonOf>): EditionResults['results'] => seasonOf(...asked).results;

const seasonsBefore = ({ seasons }: Demo, { season }: SeasonPlan): SeasonPlan[] =>
  seasons.filter((one) => one.season.slug < season.slug).toReversed();

const knownSpreads = new Map<SeasonPlan, SpreadsEvidence>();
function spreadsOf(demo: Demo, plan: SeasonPlan): SpreadsEvidence {
  const spreads = knownSpreads.get(plan) ?? spreadsFound(computed(demo, plan, {}, {}));
  knownSpreads.set(plan, spreads);
  return spreads;
}

function computed(
  demo: Demo,
  { season, entries, handIns }: SeasonPlan,
  spoolsAs: Readonly<Record<string, string>>,
  elsewhere: Elsewhere,
): EditionResults {
  const counted = handIns.flatMap((handIn) => {
    const figures = countedFigures(handIn);
    const { key, variant, spool, method, tester } = handIn.task;
    return figures
      ? [{ reference: key, variant: spoolsAs[spool] ?? variant, method, tester: String(tester), figures, ...rigOn(handIn.content) }]
      : [];
  });
  const slugs = entries.map(({ slug }) => slug);
  return computeResults(
    slugs,
    quantitiesOf(demoScheme.rules.categories, PINNED),
    counted,
    new Map(entries.map((entry) => [entry.slug, claimedForceN(demo.seed, entry)])),
    { effects: effectsIn(demo, season.slug), ...elsewhere },
  );
}

/** What control pulls and the round robin tell of rigs and testers by the end of a season. */
const effectsIn = (demo: Demo, season: string): EffectsEvidence =>
  knownEffects(
    { controlPulls: controlPullsUpTo(demo, season), roundRobins: ROUND_ROBIN.season === season ? [roundRobinOf(demo)] : [] },
    PINNED,
  );

/** Control pulls of the seasons up to one, in the order of bench days. */
export function controlPullsUpTo({ seed, seasons }: Demo, last: string): ControlPullEvidence[] {
  const played = seasons.filter(({ season }) => season.slug <= last);
  const pulls = played.flatMap(({ season, handIns }) => [
    ...demoControlLines.filter((line) => line.season === season.slug).flatMap((line) => baselinePullsOf(seed, line).flat()),
    ...season.benchDays.flatMap((_, day) =>
      controlPullsOf(
        seed,
        handIns.filter(({ task }) => task.day === day),
      ),
    ),
  ]);
  return pulls.map((pull) => ({
    ...pull,
    tester: String(pull.tester),
    controlLine: { code: pull.controlLine, name: '', lot: '' },
    readings: pull.readings.map(inSi),
    note: null,
    strike: null,
  }));
}

function roundRobinOf({ seed, seasons }: Demo): RoundRobinEvidence {
  const { slug, name, words, method, rig, specimens, variants } = ROUND_ROBIN;
  const { spools } = seasons.find(({ season }) => season.slug === ROUND_ROBIN.season)!;
  const pulled = variants.map((variant) => spools.find((spool) => spool.variant === variant)!);
  const cells = TESTERS.flatMap((tester) =>
    pulled.map((spool) => ({ tester, level: spool.key, instrument: rig, readings: roundRobinPulls(seed, tester, spool).map(inSi) })),
  );
  const levels = pulled.map(({ key }) => key);
  return { slug, name, words, method, specimens, levels, cells, testers: TESTERS.length, state: 'closed', closedOn: null };
}

const TESTERS = demoTesters.map((_, index) => index);
const inSi = ({ text, unit }: { text: string; unit: string }) => ({ text, unit, valueN: parseQuantityAs(text, unit, 'force').si });

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

/** Standings of a season by division, exclusions observed. */
export function standingsOf(
  demo: Demo,
  plan: SeasonPlan,
  spoolsAs?: Readonly<Record<string, string>>,
  elsewhere?: Elsewhere,
): ReadonlyMap<string, Standings> {
  const results = resultsOf(demo, plan, spoolsAs, elsewhere);
  return new Map(demoDivisions.map((division) => [division.slug, standingsIn(division, plan, results)]));
}

function standingsIn({ takes: rule, scheme }: PlannedDivision, plan: SeasonPlan, results: ReturnType<typeof resultsOf>): Standings {
  const { rules } = [demoScheme, demoStrandScheme].find(({ slug }) => slug === scheme.slug)!;
  const { categories } = rules;
  const own = plan.entries.filter(({ line }) => takes(rule, MAKES[line.make]));
  const entries = own.map(({ slug }) => {
    const exclusion = plan.exclusions.find(({ variant }) => variant === slug);
    const values = categories.map((category) => {
      const { code, places } = category;
      const estimate = results.get(slug)?.get(keyOf(category))?.estimate;
      return [code, estimate ? roundHalfEven(estimate.value, places) : null] as const;
    });
    return { id: slug, exclusion: exclusion ? { effect: exclusion.effect } : null, values: Object.fromEntries(values) };
  });
  return computeStandings({ ...rules, entries });
}

/** What a release took from beside the submissions: re-tests are drawn when the house stands, with control pulls of their day. */
export const elsewhereOf = ({ evidence, earlier }: ReleaseInputs): Elsewhere => ({
  effects: knownEffects(evidence, evidence.edition.methods),
  before: spreadsBefore(earlier),
  retested: retestedIn(evidence),
});

/** Rows that one of both has not, or that have another place or score. */
export function misplaced(
  published: readonly { readonly variant: { readonly slug: string }; readonly place: number | null; readonly score: string }[],
  computed: Standings['overall'],
): string[] {
  const shown = new Map(published.map(({ variant, place, score }) => [variant.slug, `${place} with ${Number(score)}`]));
  const own = new Map(computed.map(({ id, place, score }) => [id, `${place} with ${Number(score)}`]));
  return [...new Set([...shown.keys(), ...own.keys()])].filter((id) => shown.get(id) !== own.get(id));
}
