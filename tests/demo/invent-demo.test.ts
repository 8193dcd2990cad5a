import { claimRequest, lineRequest, makerRequest, variantRequest } from '../../api/contract/endpoints/catalogue.js';
import { schemeRequest } from '../../api/contract/endpoints/schemes.js';
import { equivalentSolidDiameterMm } from '../../api/measurement/figures/cross-section.js';
import { methodVersionRequest } from '../../api/contract/endpoints/methods.js';
import { submissionContent } from '../../api/contract/submission-content.js';
import { demoAccounts, demoReviewers, demoTesters } from '../../prisma/seed/demo-accounts.js';
import { inventDemo } from '../../prisma/seed/demo.js';
import { demoClaims } from '../../prisma/seed/house/claims.js';
import { demoInstruments, RIGS } from '../../prisma/seed/house/instruments.js';
import { demoLines } from '../../prisma/seed/house/lines.js';
import { demoMakers } from '../../prisma/seed/house/makers.js';
import { demoScheme } from '../../prisma/seed/house/scheme.js';
import { demoMethods } from '../../prisma/seed/methods/demo-methods.js';
import { MAKES } from '../../prisma/seed/model/makes.js';
import { SEED } from '../../prisma/seed/model/seed.js';
import { trueLine } from '../../prisma/seed/model/true-line.js';

const demo = inventDemo();
const handIns = demo.seasons.flatMap((season) => season.handIns);

test('the same seed gives the same demo, another seed another one', () => {
  expect(JSON.stringify(inventDemo())).toBe(JSON.stringify(demo));
  expect(JSON.stringify(inventDemo(SEED + 1).seasons)).not.toBe(JSON.stringify(demo.seasons));
});

test('adding variants leaves what the others measure as it was', () => {
  const one = (count: number) => trueLine(SEED, inventDemo(SEED, count).variants[5]!);
  expect(one(24)).toEqual(one(60));
});

test('the house has what the scenario asks for', () => {
  expect(demoMakers).toHaveLength(12);
  expect(new Set(demo.variants.map(({ maker }) => maker.slug)).size).toBe(12);
  expect(demo.variants.length).toBeGreaterThanOrEqual(60);
  expect(demoScheme.rules.categories).toHaveLength(5);
  expect(demoTesters).toHaveLength(5);
  expect(demoReviewers).toHaveLength(2);
  expect(demo.seasons.map(({ season }) => season.slug)).toEqual(['2024', '2025', '2026', '2027']);
  expect(demo.seasons.filter(({ season }) => season.publishedOn !== null)).toHaveLength(3);
});

test('each of sixty variants has its plan in each season', () => {
  expect(new Set(demo.variants.map(({ slug }) => slug)).size).toBe(60);
  for (const { entries, handIns: pulled, season } of demo.seasons) {
    expect(entries.length).toBeGreaterThan(50);
    if (season.publishedOn !== null) expect(pulled.length).toBeGreaterThan(5 * entries.length);
  }
});

test('too few and too many variants are refused', () => {
  expect(() => inventDemo(SEED, 23)).toThrow(/24 to/);
  expect(() => inventDemo(SEED, 500)).toThrow(/24 to/);
});

describe('every part is what the API takes', () => {
  test('catalogue', () => {
    for (const { slug, name } of demoMakers) makerRequest.parse({ slug, name });
    for (const { slug, maker, name, make } of demoLines) {
      const { material, construction, carriers, densityGPerCm3 } = MAKES[make];
      lineRequest.parse({ slug, maker, name, material, construction, carriers, densityGPerCm3 });
    }
    for (const variant of demo.variants) {
      variantRequest.parse({ slug: variant.slug, line: variant.line.slug, size: variant.label, colour: variant.colour });
      for (const claim of demoClaims(SEED, variant)) claimRequest.parse({ ...claim, seenOn: '2023-09-20' });
    }
    expect(new Set(demoLines.map(({ slug }) => slug)).size).toBe(demoLines.length);
  });

  test('methods, scheme and submissions', () => {
    for (const { versions } of demoMethods) for (const version of versions) methodVersionRequest.parse(version);
    schemeRequest.parse(demoScheme);
    for (const { content } of handIns) submissionContent.parse({ ...content, spool: 'AAAAAAA' });
    expect(handIns.length).toBeGreaterThan(1000);
  });
});

describe('the bench is used as a bench can be', () => {
  const pulled = handIns.filter(({ task }) => task.rig !== null);

  test('one tester at a rig, and one rig for a tester, on a bench day', () => {
    const cleared = pulled.filter(({ task }) => !(task.season === '2025' && task.day === 7));
    const byRig = Map.groupBy(cleared, ({ task }) => `${task.benchDay} ${task.rig ?? ''}`);
    for (const atRig of byRig.values()) expect(new Set(atRig.map(({ task }) => task.tester)).size).toBe(1);
    const byTester = Map.groupBy(pulled, ({ task }) => `${task.benchDay} ${task.tester}`);
    for (const ofTester of byTester.values()) expect(new Set(ofTester.map(({ task }) => task.rig)).size).toBe(1);
  });

  test('every variant is pulled straight by two testers, with five specimens or more, on two rigs but where a certificate had run out', () => {
    const alone: string[] = [];
    for (const { season, entries, handIns: all } of demo.seasons.filter((one) => one.season.publishedOn !== null)) {
      for (const { slug } of entries) {
        const straight = all.filter(({ task }) => task.variant === slug && task.method === 'straight-pull');
        const rigs = new Set(straight.map(({ task }) => task.rig)).size;
        if (rigs < 2) alone.push(`${season.slug}/${slug}`);
        expect(new Set(straight.map(({ task }) => task.tester)).size).toBeGreaterThanOrEqual(2);
        for (const { content } of straight)
          expect(content.specimens.filter(({ validity }) => validity === 'valid').length).toBeGreaterThanOrEqual(5);
      }
    }
    expect(alone).toEqual(['2025/squallrope-8-pe-1-0', '2025/skerrygrip-12-pe-1-0']);
  });

  test('every instrument used has a certificate that is valid on the day', () => {
    for (const { content } of handIns) {
      for (const code of content.instruments) {
        const { calibrations } = demoInstruments.find((instrument) => instrument.code === code)!;
        expect(calibrations.some(({ validFrom, validUntil }) => validFrom <= content.benchDay && content.benchDay <= validUntil)).toBe(
          true,
        );
      }
    }
    expect(RIGS).toHaveLength(3);
  });
});

describe('an angler finds the numbers believable', () => {
  const lines = demo.variants.map((variant) => ({ variant, is: trueLine(SEED, variant), make: MAKES[variant.line.make] }));

  test('a braid of PE 1 measures 0.16 to 0.23 mm and holds 6.5 to 11 kgf (common practice, from memory)', () => {
    const peOne = lines.filter(({ variant, make }) => make.material === 'UHMWPE' && variant.size === '1.0');
    expect(peOne.length).toBeGreaterThan(5);
    for (const { is } of peOne) {
      expect(is.diameterMm).toBeGreaterThan(0.16);
      expect(is.diameterMm).toBeLessThan(0.23);
      expect(is.breakingForceN / 9.80665).toBeGreaterThan(6.5);
      expect(is.breakingForceN / 9.80665).toBeLessThan(11);
    }
  });

  test('nylon of 0.25 mm holds 3.5 to 6 kgf (common practice, from memory)', () => {
    const strands = lines.filter(({ variant }) => variant.line.make === 'nylon' && variant.size === '0.25');
    expect(strands.length).toBeGreaterThan(0);
    for (const { is } of strands) expect(Math.abs(is.breakingForceN / 9.80665 - 4.75)).toBeLessThan(1.25);
  });

  test('no line is thinner than its own fibre, nor stronger than a filament of its material (textbook ranges, from memory)', () => {
    const strongest = { UHMWPE: 4000, nylon: 1100, fluorocarbon: 850 };
    for (const { is, make } of lines) {
      expect(is.diameterMm).toBeGreaterThanOrEqual(0.999 * equivalentSolidDiameterMm(is.linearDensityTex, Number(make.densityGPerCm3)));
      expect(is.breakingForceN / ((Math.PI / 4) * is.diameterMm ** 2)).toBeLessThan(strongest[make.material]);
    }
  });

  test('knots keep 50 to 95 % (common practice, from memory)', () => {
    for (const { is } of lines)
      for (const kept of [is.palomarRetention, is.fgRetention]) expect(Math.abs(kept - 0.725)).toBeLessThan(0.225);
  });
});

test('accounts have reserved addresses and passwords that the program takes', () => {
  for (const { email, password } of demoAccounts) {
    expect(email).toMatch(/\.example$/);
    expect(password.length).toBeGreaterThanOrEqual(12);
  }
  expect(new Set(demoAccounts.map(({ email }) => email)).size).toBe(demoAccounts.length);
});
