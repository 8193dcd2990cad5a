import { CLAIM, SPOOL } from './catalogue-fixtures.js';
import { METHOD_SERIES } from './method-series.js';
import type { EditionDocument } from '../../api/contract/documents/release-documents.js';
import type { Caller } from './test-application.js';

/** Everything here goes through the API, as people do it. */
const LIMITS = {
  minimumSpecimens: 5,
  maximumCvPercent: 12,
  gripBreakSharePercent: 40,
  timeToBreakS: { low: 8, high: 40 },
  ambientTemperatureC: { low: 18, high: 26 },
  ambientHumidityPercent: { low: 40, high: 75 },
};
export const METHOD_VERSION = {
  number: 1,
  effectiveFrom: '2026-01-01',
  effectiveUntil: null as string | null,
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
export const METHODS = ['straight-pull', 'diameter', 'named-knot', 'abrasion'] as const;
export type MethodSlug = (typeof METHODS)[number];

const GAUGE = { kind: 'forceGauge', capacity: { text: '500', unit: 'N' }, resolution: { text: '0.01', unit: 'N' } };
const INSTRUMENTS = [
  { ...GAUGE, code: 'R1', name: 'First rig' },
  { ...GAUGE, code: 'R2', name: 'Second rig' },
  { code: 'M1', kind: 'micrometer', name: 'Micrometer', capacity: { text: '25', unit: 'mm' }, resolution: { text: '0.001', unit: 'mm' } },
];

const share = {
  section: null,
  unit: '%',
  places: 1,
  tradeUnit: null,
  tradePlaces: null,
  direction: 'more',
  weight: '1',
  minimum: { specimens: 1, testers: 1, rigs: 1 },
};
export const SCHEME = {
  slug: 'three-places',
  number: 1,
  name: 'Three places',
  words: 'The places in three categories are added; the lowest sum comes first.',
  rules: {
    combine: 'sumOfPlaces',
    countPlaces: 'beforeExclusions',
    tieBreak: 'none',
    categories: [
      {
        ...share,
        code: 'stress',
        name: 'Breaking stress',
        quantity: 'apparentStress',
        unit: 'MPa',
        places: 0,
        tradeUnit: 'psi',
        tradePlaces: 0,
        method: 'straight-pull',
        series: 'untreated',
        section: { method: 'diameter', series: 'outline' },
        conditions: 'Nothing tied',
      },
      {
        ...share,
        code: 'knot',
        name: 'Knot retention',
        quantity: 'retention',
        method: 'named-knot',
        series: 'knotted',
        conditions: 'Knotted',
      },
      {
        ...share,
        code: 'abrasion',
        name: 'Abrasion retention',
        quantity: 'retention',
        method: 'abrasion',
        series: 'abraded',
        conditions: 'Rubbed',
      },
    ],
  },
};

export const MAKERS = [
  { slug: 'marlow-quay', name: 'Marlow Quay Cordage' },
  { slug: 'seven-weirs', name: 'Seven Weirs Line Works' },
] as const;

/** A variant with what the bench finds: mean pull [N], mean diameter [mm], shares kept [%], and the rated strength on its label [lbf]. */
export interface InventedVariant {
  readonly slug: string;
  readonly maker: string;
  readonly forceN: number;
  readonly diameterMm: number;
  readonly knotPercent: number;
  readonly abrasionPercent: number;
  readonly ratedLbf: string;
}
const [quay, weirs] = [MAKERS[0].slug, MAKERS[1].slug];
export const VARIANTS: readonly InventedVariant[] = [
  { slug: 'gannet-20', maker: quay, forceN: 96.4, diameterMm: 0.231, knotPercent: 48.2, abrasionPercent: 71.9, ratedLbf: '20' },
  { slug: 'gannet-30', maker: quay, forceN: 134.1, diameterMm: 0.284, knotPercent: 52.6, abrasionPercent: 64.4, ratedLbf: '30' },
  { slug: 'petrel-20', maker: weirs, forceN: 88.7, diameterMm: 0.242, knotPercent: 61.3, abrasionPercent: 80.6, ratedLbf: '22' },
  { slug: 'petrel-30', maker: weirs, forceN: 118.2, diameterMm: 0.266, knotPercent: 44.1, abrasionPercent: 58.8, ratedLbf: '25' },
  { slug: 'petrel-40', maker: weirs, forceN: 161.5, diameterMm: 0.335, knotPercent: 57.4, abrasionPercent: 76.1, ratedLbf: '38' },
];

/** Catalogue, labels, instruments with certificates, methods and the scheme; gives the blind code of each variant's spool. */
export async function fitOutHouse(editor: Caller, variants: readonly InventedVariant[] = VARIANTS): Promise<Map<string, string>> {
  const post = (path: string, body: object) => editor.call('post', path).send(body).expect(201);
  for (const maker of MAKERS) {
    await post('/v1/catalogue/makers', maker);
    const line = { slug: `${maker.slug}-eight`, maker: maker.slug, name: 'Eight', material: 'UHMWPE' };
    await post('/v1/catalogue/lines', { ...line, construction: 'braided', carriers: 8, densityGPerCm3: '0.97' });
  }
  const codes = new Map<string, string>();
  for (const { slug, maker, ratedLbf } of variants) {
    await post('/v1/catalogue/variants', { slug, line: `${maker}-eight`, size: slug, colour: 'moss' });
    await post(`/v1/catalogue/variants/${slug}/claims`, { ...CLAIM, printed: { text: ratedLbf, unit: 'lbf' } });
    const spool = await post('/v1/catalogue/spools', { ...SPOOL, variant: slug });
    codes.set(slug, spool.body.blindCode);
  }
  for (const instrument of INSTRUMENTS) {
    await post('/v1/instruments', instrument);
    const validity = { validFrom: '2026-01-01', validUntil: '2026-12-31', correctionPercent: '0' };
    const certificate = { certificate: `C-${instrument.code}`, ...validity, expandedUncertaintyPercent: '0.5', coverageFactor: '2' };
    await post(`/v1/instruments/${instrument.code}/calibrations`, certificate);
  }
  for (const slug of METHODS) {
    await post('/v1/catalogue/methods', { slug, name: slug });
    const limits = slug === 'diameter' ? { ...LIMITS, minimumSpecimens: 1, timeToBreakS: null } : LIMITS;
    await post(`/v1/catalogue/methods/${slug}/versions`, { ...METHOD_VERSION, limits, series: METHOD_SERIES[slug] });
  }
  await post('/v1/schemes', SCHEME);
  return codes;
}

/** A request to plan an edition on the scheme above. */
/** A scheme that ranks by one force and needs one method. */
export const FORCE_SCHEME = {
  ...SCHEME,
  slug: 'one-force',
  rules: {
    ...SCHEME.rules,
    categories: [
      {
        ...share,
        code: 'force',
        name: 'Breaking force',
        quantity: 'breakingForce',
        unit: 'N',
        method: 'straight-pull',
        series: 'untreated',
        conditions: 'Nothing tied',
      },
    ],
  },
};

export const editionRequest = (slug: string, change: object = {}) => ({
  slug,
  name: `Trials ${slug}`,
  scheme: { slug: SCHEME.slug, number: 1 },
  opensOn: '2026-01-01',
  closesOn: '2026-12-31',
  previous: null as string | null,
  methods: METHODS.map((method) => ({ slug: method, number: 1 })),
  ...change,
});

/** Moves an edition on, from the version that it stands at. */
export async function moveEdition(editor: Caller, slug: string, step: 'opening' | 'closure'): Promise<void> {
  const { body } = await editor.call('get', `/v1/bench/editions/${slug}`).expect(200);
  await editor.call('post', `/v1/editions/${slug}/${step}`).set('If-Match', `"${body.version}"`).expect(201);
}

export async function openEdition(editor: Caller, slug: string, entries: readonly string[], change: object = {}): Promise<void> {
  await editor.call('post', '/v1/editions').send(editionRequest(slug, change)).expect(201);
  await editor.call('post', `/v1/editions/${slug}/entries`).send({ variants: entries }).expect(201);
  await moveEdition(editor, slug, 'opening');
}

/** Accepts everything that waits in an edition, with words for every finding. */
export async function acceptAll(reviewer: Caller, edition: string): Promise<void> {
  const waiting = async (): Promise<{ reference: string }[]> =>
    (await reviewer.call('get', `/v1/submissions?edition=${edition}&state=submitted&limit=200`).expect(200)).body.items;
  for (let page = await waiting(); page.length > 0; page = await waiting()) {
    for (const { reference } of page) {
      const seen = await reviewer.call('get', `/v1/submissions/${reference}`).expect(200);
      const resolutions = (seen.body.findings as { id: string }[]).map(({ id }) => ({ finding: id, words: 'Looked at; it stands.' }));
      await reviewer
        .call('post', `/v1/submissions/${reference}/reviews`)
        .set('If-Match', `"${seen.body.version}"`)
        .send({ decision: 'accepted', resolutions })
        .expect(201);
    }
  }
}

/** An erratum that expects what is published of the first row of the overall standings. */
export async function erratumFor(editor: Caller, slug: string, reasonCode: string, words: string) {
  const { overall } = (await editor.call('get', `/v1/editions/${slug}`).expect(200)).body as EditionDocument;
  const { variant, place } = overall[0]!;
  return { reasonCode, words, expects: [{ where: `overall, ${variant.slug}, place`, before: String(place) }] };
}

/** Asks for a release and waits until the worker has published it. */
export async function publish(editor: Caller, slug: string, erratum: object | null = null): Promise<number> {
  const asked = await editor.call('post', `/v1/editions/${slug}/releases`).send({ erratum }).expect(202);
  const revision = asked.body.revision as number;
  const until = Date.now() + 60_000;
  for (;;) {
    const { body } = await editor.call('get', `/v1/editions/${slug}/releases/${revision}`).expect(200);
    if (body.state === 'published') return revision;
    if (Date.now() > until) throw new Error(`Revision ${revision} of ${slug} is ${body.state} after a minute; expected published.`);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}
