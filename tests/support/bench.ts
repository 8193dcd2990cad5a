import { randomUUID } from 'node:crypto';
import type { Identifiers } from '../../api/platform/identifiers/identifiers.js';
import { CLAIM, fillCatalogue, OTHER_VARIANT, SPOOL, VARIANT } from './catalogue-fixtures.js';
import { runSql } from './run-sql.js';
import { METHOD_SERIES } from './method-series.js';
import { SCHEME } from './season.js';
import { createTestApplication } from './test-application.js';
import type { Caller, TestApplication } from './test-application.js';

const LIMITS = {
  minimumSpecimens: 5,
  maximumCvPercent: 12,
  gripBreakSharePercent: 40,
  timeToBreakS: { low: 10, high: 30 },
  ambientTemperatureC: { low: 18, high: 26 },
  ambientHumidityPercent: { low: 40, high: 75 },
};

export const METHOD_VERSION = {
  number: 1,
  effectiveFrom: '2026-01-01',
  effectiveUntil: null,
  limits: LIMITS,
  series: METHOD_SERIES['straight-pull'],
  parameters: { areaFrom: 'circle', reproducibilityPercent: 2, places: { breakingForce: 1 }, settings: [] },
  wording: {
    purpose: 'Finds the force at which a specimen parts.',
    apparatus: ['Force gauge'],
    steps: ['Pull until the specimen parts.'],
    formulae: [],
    cautions: ['A line under load whips when it parts: stay out of its path.'],
    sources: ['common practice'],
    changes: 'First version.',
  },
  isComparableWithPrevious: false,
};

const INSTRUMENTS = [
  { code: 'R1', kind: 'forceGauge', name: 'Bench gauge', capacity: { text: '500', unit: 'N' }, resolution: { text: '0.01', unit: 'N' } },
  { code: 'M1', kind: 'micrometer', name: 'Micrometer', capacity: { text: '25', unit: 'mm' }, resolution: { text: '0.001', unit: 'mm' } },
];
const CERTIFICATE = {
  certificate: 'C-1',
  validFrom: '2026-01-01',
  validUntil: '2026-12-31',
  correctionPercent: '0',
  expandedUncertaintyPercent: '0.5',
  coverageFactor: '2',
};

/** A house with one open edition, two spools of entered variants, one of a variant that is not entered, and people in every role. */
export interface Bench {
  readonly t: TestApplication;
  readonly tester: Caller;
  readonly otherTester: Caller;
  readonly reviewer: Caller;
  readonly editor: Caller;
  readonly spool: string;
  readonly otherSpool: string;
  readonly strangeSpool: string;
  readonly editionId: string;
  readonly makerSlug: string;
  sql(statement: string, values?: unknown[]): Promise<Record<string, unknown>[]>;
}

export async function setUpBench(identifiers?: Identifiers, rules: object = SCHEME.rules): Promise<Bench> {
  const t = await createTestApplication({}, identifiers);
  const editor = await t.caller(['editor'], 'E. Marsh');
  const sql = (statement: string, values: unknown[] = []) => runSql(t.databaseUrl, statement, values);
  await fillCatalogue(editor);
  await editor
    .call('post', '/v1/catalogue/variants')
    .send({ ...VARIANT, slug: 'tern-40-moss', size: 'gauge forty' })
    .expect(201);
  await editor.call('post', `/v1/catalogue/variants/${VARIANT.slug}/claims`).send(CLAIM).expect(201);
  for (const instrument of INSTRUMENTS) {
    await editor.call('post', '/v1/instruments').send(instrument).expect(201);
    await editor
      .call('post', `/v1/instruments/${instrument.code}/calibrations`)
      .send({ ...CERTIFICATE, certificate: `C-${instrument.code}` })
      .expect(201);
  }
  for (const [slug, name] of [
    ['straight-pull', 'Straight pull'],
    ['diameter', 'Diameter'],
  ] as const) {
    await editor.call('post', '/v1/catalogue/methods').send({ slug, name }).expect(201);
    const limits = slug === 'diameter' ? { ...LIMITS, minimumSpecimens: 1, timeToBreakS: null } : LIMITS;
    await editor
      .call('post', `/v1/catalogue/methods/${slug}/versions`)
      .send({ ...METHOD_VERSION, limits, series: METHOD_SERIES[slug] })
      .expect(201);
  }
  const spoolOf = async (variant: string) =>
    (
      await editor
        .call('post', '/v1/catalogue/spools')
        .send({ ...SPOOL, variant })
        .expect(201)
    ).body.blindCode as string;
  const spools = [await spoolOf(VARIANT.slug), await spoolOf(OTHER_VARIANT.slug), await spoolOf('tern-40-moss')] as const;
  const editionId = await openEdition(sql, '2026', ['straight-pull', 'diameter'], rules);
  const people = [
    await t.caller(['tester'], 'T. Venn'),
    await t.caller(['tester'], 'O. Talland'),
    await t.caller(['reviewer'], 'R. Quill'),
  ] as const;
  return {
    t,
    tester: people[0],
    otherTester: people[1],
    reviewer: people[2],
    editor,
    spool: spools[0],
    otherSpool: spools[1],
    strangeSpool: spools[2],
    editionId,
    makerSlug: 'north-bay',
    sql,
  };
}

/** An open edition with the first two variants entered, straight into the record: how it opens is told elsewhere. */
async function openEdition(sql: Bench['sql'], slug: string, methods: string[], rules: object): Promise<string> {
  const [scheme, edition] = [randomUUID(), randomUUID()];
  await sql(`INSERT INTO scheme (id, slug, number, name, words, rules) VALUES ($1, $2, 1, 's', 's', $3)`, [
    scheme,
    slug,
    JSON.stringify(rules),
  ]);
  await sql(
    `WITH planned AS (INSERT INTO edition (id, slug, name, state, opens_on, closes_on) VALUES ($1, $2, 'e', 'planned', '2026-01-01', '2026-12-31'))
     INSERT INTO division (id, edition_id, position, materials, constructions, scheme_id) VALUES (gen_random_uuid(), $1, 0, '{}', '{}', $3)`,
    [edition, slug, scheme],
  );
  await sql(`UPDATE edition SET state = 'open' WHERE id = $1`, [edition]);
  await sql(`INSERT INTO entry (id, edition_id, variant_id) SELECT gen_random_uuid(), $1, id FROM variant WHERE slug = ANY($2)`, [
    edition,
    [VARIANT.slug, OTHER_VARIANT.slug],
  ]);
  await sql(
    `INSERT INTO edition_method (edition_id, method_version_id) SELECT $1, v.id FROM method_version v JOIN method m ON m.id = v.method_id WHERE m.slug = ANY($2)`,
    [edition, methods],
  );
  return edition;
}

/** Ten pulls around the given force [N], each its own number. */
export const pulls = (forceN = 90, count = 10) =>
  Array.from({ length: count }, (_, index) => ({
    number: index + 1,
    readings: [
      {
        role: 'breakingForce',
        value: (forceN + [1.13, -2.41, 0.57, -0.86, 2.39, -1.72, 0.24, 1.98, -0.35, -1.07][index % 10]! + 0.01 * index).toFixed(2),
        unit: 'N',
      },
      { role: 'timeToBreak', value: (18 + (index % 7) * 0.3).toFixed(1), unit: 's' },
    ],
  }));

/** What a tester hands in when all is well. */
export const contentFor = (spool: string, change: object = {}) => ({
  edition: '2026',
  spool,
  method: 'straight-pull',
  methodVersion: 1,
  benchDay: '2026-03-10',
  zone: 'Europe/Lisbon',
  instruments: ['R1'],
  ambient: { temperature: { value: '21.5', unit: '°C' }, humidityPercent: '55' },
  specimens: pulls(),
  ...change,
});

/** Plans a round robin of both testers on a spool, by the editor. */
export async function planRoundRobin({ editor, tester, otherTester, spool }: Bench, slug: string): Promise<void> {
  await editor
    .call('post', '/v1/round-robins')
    .send({
      slug,
      name: 'Hands of the quay',
      words: 'How far two hands differ.',
      method: 'straight-pull',
      spools: [spool],
      specimens: 2,
      testers: [tester.accountId, otherTester.accountId],
    })
    .expect(201);
}
