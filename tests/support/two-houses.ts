/** Two houses that are the same but for one line: what it is, when it was obtained, what its label says, and what others found of it. */
import { contentFor, pulls, setUpBench } from './bench.js';
import type { Bench } from './bench.js';
import type { Caller } from './test-application.js';
import { Identifiers } from '../../api/platform/identifiers/identifiers.js';

interface InventedLine {
  readonly line: object;
  readonly claims: readonly (readonly [quantity: string, text: string, unit: string])[];
  readonly obtainedOn: string;
  /** What an honest tester found [N]. */
  readonly foundN: number;
}

const COMMON = { slug: 'sought', maker: 'north-bay', name: 'Sought' };
/** A thick braid and a thin nylon: nothing about them is alike. */
const LINES: readonly [InventedLine, InventedLine] = [
  {
    line: { ...COMMON, material: 'UHMWPE', construction: 'braided', carriers: 8, densityGPerCm3: '0.97' },
    claims: [
      ['breakingForce', '80', 'lbf'],
      ['diameter', '0.42', 'mm'],
    ],
    obtainedOn: '2026-01-05',
    foundN: 371,
  },
  {
    line: { ...COMMON, maker: 'far-shoal', material: 'Nylon', construction: 'monofilament', carriers: null, densityGPerCm3: '1.14' },
    claims: [
      ['breakingForce', '6', 'lbf'],
      ['diameter', '0.21', 'mm'],
      ['linearDensity', '380', 'dtex'],
    ],
    obtainedOn: '2026-03-20',
    foundN: 27,
  },
];

/** Codes and secrets in the same order in both houses. */
class CountingIdentifiers extends Identifiers {
  private drawn = 0;

  override below(limit: number): number {
    this.drawn += 1;
    return (this.drawn * 7919 + Math.floor(this.drawn / 7) * 104_729) % limit;
  }
}

/** One of the two, with the code of the line that is sought and the tester who seeks. */
export interface HouseOfTwo {
  readonly b: Bench;
  readonly spool: string;
  /** What its line is called from some time on, otherwise in either house. */
  readonly lineName: string;
  readonly cheat: Caller;
}

const CERTIFICATE = {
  validFrom: '2026-01-01',
  validUntil: '2026-12-31',
  correctionPercent: '0',
  expandedUncertaintyPercent: '0.5',
  coverageFactor: '2',
};

async function buildHouse({ line, claims, obtainedOn, foundN }: InventedLine): Promise<HouseOfTwo> {
  const b = await setUpBench(new CountingIdentifiers());
  b.t.clock.time = new Date('2026-04-15T12:00:00Z');
  const post = (path: string, body: object) => b.editor.call('post', path).send(body).expect(201);
  await post('/v1/catalogue/makers', { slug: 'far-shoal', name: 'Far Shoal Nylons' });
  await post('/v1/catalogue/lines', line);
  await post('/v1/catalogue/variants', { slug: 'sought-1', line: 'sought', size: 'one', colour: 'moss' });
  for (const [quantity, text, unit] of claims)
    await post('/v1/catalogue/variants/sought-1/claims', {
      quantity,
      basis: 'average',
      printed: { text, unit },
      seenOn: '2026-01-01',
      source: 'label',
    });
  const spool = (
    await post('/v1/catalogue/spools', { variant: 'sought-1', source: 'bought', obtainedOn, place: 'a shop', lot: null, lengthM: '150' })
  ).body.blindCode as string;
  await b.sql(`INSERT INTO entry (id, edition_id, variant_id) SELECT gen_random_uuid(), $1, id FROM variant WHERE slug = 'sought-1'`, [
    b.editionId,
  ]);
  await post('/v1/instruments', {
    code: 'R2',
    kind: 'forceGauge',
    name: 'Other gauge',
    capacity: { text: '500', unit: 'N' },
    resolution: { text: '0.01', unit: 'N' },
  });
  await post('/v1/instruments/R2/calibrations', { ...CERTIFICATE, certificate: 'C-R2' });
  await post('/v1/control-lines', { code: 'C1', name: 'Reference', lot: 'L', words: 'Kept dark.' });
  // What others found of it is on record, and differs as the lines do.
  await b.otherTester
    .call('post', '/v1/submissions')
    .send(contentFor(spool, { benchDay: '2026-04-01', specimens: pulls(foundN) }))
    .expect(201);
  const cheat = await b.t.caller(['tester'], 'D. Honest');
  await cheat.call('post', '/v1/interests').send({ maker: 'far-shoal', words: 'A cousin works there.' }).expect(201);
  await post('/v1/round-robins', {
    slug: 'spring',
    name: 'Spring round',
    words: 'How far do our benches differ?',
    method: 'straight-pull',
    spools: [spool, b.spool],
    specimens: 3,
    testers: [cheat.accountId, b.otherTester.accountId],
  });
  await b.editor.call('post', '/v1/round-robins/spring/opening').set('If-Match', '"1"').expect(201);
  // Uncompressed: the size of what is compressed depends on ids that are drawn by chance.
  const plainly =
    (way: 'call' | 'browse'): Caller['call'] =>
    (method, path) =>
      cheat[way](method, path).set('Accept-Encoding', 'identity');
  return { b, spool, lineName: `Sought ${foundN}`, cheat: { ...cheat, call: plainly('call'), browse: plainly('browse') } };
}

export const buildTwoHouses = async (): Promise<readonly [HouseOfTwo, HouseOfTwo]> => [
  await buildHouse(LINES[0]),
  await buildHouse(LINES[1]),
];
