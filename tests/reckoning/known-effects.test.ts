import { spreadsOf } from '../../api/measurement/bench-model/effects-of.js';
import { chartsOf } from '../../api/reckoning/rigs/control-charts.js';
import type { ControlPullEvidence } from '../../api/reckoning/evidence/control-pull-evidence.js';
import type { Cause } from '../../api/measurement/bench-model/bench-series.js';
import type { SubmissionEvidence } from '../../api/reckoning/evidence/submission-evidence.js';
import { rigEffectOf } from '../../api/reckoning/rigs/rig-effect.js';
import { computeEdition } from '../../api/reckoning/standings/compute-edition.js';
import { knownEffects } from '../../api/reckoning/rigs/known-effects.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import { controlPulls } from '../support/invented/control-pulls.js';
import { KEYS, METHOD_SERIES } from '../support/method-series.js';
import { inventInputs } from '../support/invent-inputs.js';

/** Twelve pulls about a level, half of them a newton above and half below: s² = 12/11, so that u² of the mean is 1/11. */
const about = (levelN: number): number[] => Array.from({ length: 12 }, (_, i) => levelN + (i % 2 ? 1 : -1));
const threeRigs = [
  ...controlPulls(about(100), { rig: 'R1' }),
  ...controlPulls(about(102), { rig: 'R2' }),
  ...controlPulls(about(98), { rig: 'R3' }),
];
const effectOf = (pulls: readonly ControlPullEvidence[], method = 'straight-pull') => rigEffectOf(chartsOf(pulls), method);

describe('what the control line tells of rigs', () => {
  test('the variance of their levels, less what the pulls scatter by', () => {
    // Balanced one-way random effects by moments: s²(means) − u² = 4 − 1/11, over the centre of 100 N (Searle 1971, from memory).
    const effect = effectOf(threeRigs);
    expect(effect).toEqual({
      relativeSd: expect.closeTo(Math.sqrt(4 - 1 / 11) / 100, 12),
      degreesOfFreedom: 2,
      controlLine: 'C1',
      rigs: ['R1', 'R2', 'R3'],
      pulls: 36,
    });
  });

  test('rigs that differ by no more than their pulls scatter have no effect', () => {
    expect(effectOf([...controlPulls(about(100)), ...controlPulls(about(100.2), { rig: 'R2' })])?.relativeSd).toBe(0);
  });

  test('pulls that put a rig out, or were struck, tell nothing of its level', () => {
    const [last] = controlPulls([100], { rig: 'R1', after: 13 });
    const struck = { ...last!, readings: [{ text: '300', unit: 'N', valueN: '300' }], strike: { reason: 'A slip.', on: '2026-01-09' } };
    expect(effectOf([...threeRigs, ...controlPulls([150], { after: 12 }), struck])).toEqual(effectOf(threeRigs));
  });

  test('nothing is told by one rig, by too few pulls, or by another method', () => {
    expect(effectOf(controlPulls(about(100)))).toBeNull();
    expect(effectOf([...controlPulls(about(100)), ...controlPulls(about(102).slice(0, 10), { rig: 'R2' })])).toBeNull();
    expect(effectOf([...controlPulls(about(100)), ...controlPulls(about(102).slice(0, 11), { rig: 'R2' })])).not.toBeNull();
    expect(effectOf(threeRigs, 'named-knot')).toBeNull();
  });

  test('the line that most rigs were pulled on decides, the newest of these', () => {
    const newer = (rig: string, levelN: number) => controlPulls(about(levelN), { rig, line: 'C2', after: 20 });
    expect(effectOf([...threeRigs, ...newer('R1', 50), ...newer('R2', 50)])?.controlLine).toBe('C1');
    const all = effectOf([...threeRigs, ...newer('R1', 50), ...newer('R2', 52), ...newer('R3', 48)]);
    expect(all).toMatchObject({ controlLine: 'C2', degreesOfFreedom: 2, pulls: 36 });
  });
});

describe('an edition with control pulls', () => {
  const inputs = inventInputs(5, { variants: 4, testers: 3, rigs: 2, specimens: 6 });
  const bare = computeEdition(inputs.evidence);
  const evidence = { ...inputs.evidence, controlPulls: threeRigs };
  const watched = computeEdition(evidence);
  const { methods } = evidence.edition;

  const rigSpread = ({ fits }: typeof bare, key: string) => {
    const fit = fits[key]!;
    return fit.kind === 'fitted' ? spreadsOf(fit).find(({ cause }) => cause === 'rig')!.relativeSd : NaN;
  };

  test('weighs what they tell of its rigs beside what the season shows, and nothing else changes', () => {
    // Two per cent told, where the season alone leaves less likely: the spread moves towards it and does not become it.
    const [own, told] = [rigSpread(bare, KEYS.force), rigSpread(watched, KEYS.force)];
    expect(told).toBeGreaterThan(own);
    expect(told).not.toBeCloseTo(Math.sqrt((4 - 1 / 11) / 1e4), 4);
    expect(rigSpread(watched, KEYS.knot)).toEqual(rigSpread(bare, KEYS.knot));
    expect(watched.fits[KEYS.diameter]).toEqual(bare.fits[KEYS.diameter]);
  });

  test('without any, the numbers are as before', () => {
    expect(computeEdition({ ...inputs.evidence, controlPulls: [] })).toMatchObject({ results: bare.results });
  });

  test('what is stated goes before what the pulls tell, cause by cause', () => {
    const tester = { relativeSd: '0.004000', degreesOfFreedom: 3, source: 'roundRobin' } as const;
    const both = knownEffects({ controlPulls: threeRigs, effects: { [KEYS.force]: { tester }, [KEYS.diameter]: { tester } } }, methods);
    expect(both).toEqual({
      [KEYS.force]: { rig: expect.objectContaining({ source: 'controlPulls' }), tester },
      [KEYS.diameter]: { tester },
    });
    expect(knownEffects({ controlPulls: threeRigs, effects: { [KEYS.force]: { rig: tester } } }, methods)[KEYS.force]).toEqual({
      rig: tester,
    });
  });

  test('pulls speak for a method that has one series of forces, whatever it is called, and for no other', () => {
    const by = (method: string, series: (typeof METHOD_SERIES)[keyof typeof METHOD_SERIES]) =>
      knownEffects({ controlPulls: threeRigs.map((pull) => ({ ...pull, method })) }, [{ slug: method, number: 1, series }]);
    expect(Object.keys(by('house-pull', METHOD_SERIES['straight-pull']))).toEqual(['breakingForce/house-pull/untreated']);
    expect(by('named-knot', METHOD_SERIES['named-knot'])).toEqual({});
    expect(by('diameter', METHOD_SERIES.diameter)).toEqual({});
  });

  test('its release says so, and can be computed again from its bundle', () => {
    const files = new Map(computeRelease({ ...inputs, evidence }).map(({ path, content }) => [path, content]));
    expect(JSON.parse(files.get('documents/rigs.json')!)).toMatchObject({
      effects: [
        {
          quantity: KEYS.force,
          name: 'Breaking force',
          cause: 'rig',
          relativePercent: '1.98',
          degreesOfFreedom: 2,
          source: 'controlPulls',
        },
      ],
    });
    const bundle = JSON.parse(files.get('bundle.json')!) as { inputs: typeof inputs };
    expect(new Map(computeRelease(bundle.inputs).map(({ path, content }) => [path, content]))).toEqual(files);
  });
});

/** The same specimens by another tester on a rig of his own. */
const pulledAgain = (first: SubmissionEvidence, more: number): SubmissionEvidence => ({
  ...first,
  reference: `${first.reference}9`,
  tester: 'E. Quay',
  specimens: first.specimens.map((one) => ({
    ...one,
    readings: one.readings.map((reading) =>
      reading.role === 'breakingForce' ? { ...reading, valueSi: String(Number(reading.valueSi) * (1 + more)) } : reading,
    ),
  })),
});

describe('an edition with re-tests', () => {
  const { evidence } = inventInputs(5, { variants: 8, testers: 3, rigs: 2, specimens: 6 });
  const bare = computeEdition(evidence);
  const pulls = evidence.submissions.filter(({ method }) => method.slug === 'straight-pull').filter((_, i) => i % 2 === 0);
  /** Each pull again by one who reads a share more. */
  const retestedBy = (more: number): typeof bare => {
    const drawn = pulls.map((first) => ({ original: first.reference, again: pulledAgain(first, more) }));
    return computeEdition({ ...evidence, retests: { seed: '', percent: '50', from: [], drawnOn: '2026-01-20', drawn } });
  };
  const spreadIn = ({ fits }: typeof bare, cause: Cause): number => {
    const fit = fits[KEYS.force]!;
    return fit.kind === 'fitted' ? spreadsOf(fit).find((one) => one.cause === cause)!.relativeSd : NaN;
  };

  test('is told by them what testers differ by, and they stand for no value', () => {
    const [near, far] = [retestedBy(0.001), retestedBy(0.08)];
    expect(spreadIn(near, 'tester')).toBeLessThan(spreadIn(bare, 'tester'));
    expect(spreadIn(far, 'tester')).toBeGreaterThan(1.2 * spreadIn(bare, 'tester'));
    const [was, is] = [bare, far].map(({ results }) => results.get(pulls[0]!.variant)!.get(KEYS.force)!);
    expect([is!.submissions, is!.specimens, is!.references]).toEqual([was!.submissions, was!.specimens, was!.references]);
    expect(is!.estimate.value / was!.estimate.value).toBeCloseTo(1, 2);
  });

  test('is told nothing by one that was not found again', () => {
    const drawn = pulls.map(({ reference }) => ({ original: reference, again: null }));
    const waiting = computeEdition({ ...evidence, retests: { seed: '', percent: '50', from: [], drawnOn: '2026-01-20', drawn } });
    expect(waiting.results).toEqual(bare.results);
  });
});
