import { contentFor, METHOD_VERSION, setUpBench } from './bench.js';
import type { Bench } from './bench.js';
import { CLAIM, LINE, MAKER, SPOOL, VARIANT } from './catalogue-fixtures.js';
import { Fuzzer } from './fuzzer.js';
import type { Answer, Description, Json } from './fuzzer.js';
import { FORCE_SCHEME, SCHEME } from './season.js';
import { listen } from './races.js';
import type { Role } from '../../api/contract/roles.js';
import type { Caller } from './test-application.js';

const PEOPLE: readonly (readonly Role[])[] = [['tester'], ['reviewer'], ['editor'], ['admin'], ['tester', 'reviewer', 'editor', 'admin']];
/** A token that is refused so often in a row was revoked, or its person disabled, by another request. */
const MOST_REFUSED = 30;

/** What an answer says that it must not: a failure of the program, or words that are no problem of the catalogue. */
export function faultOf({ what, status, type, text }: Answer): string | null {
  const isRefusal = status >= 400;
  if (status >= 500) return `${what}: ${status} ${text.slice(0, 300)}`;
  if (isRefusal && !type.startsWith('application/problem+json')) return `${what}: ${status} as ${type} ${text.slice(0, 100)}`;
  if (isRefusal && /prisma|postgres|SQLSTATE|node_modules|\bat \w+ \(/i.test(text))
    return `${what}: tells of the inside, ${text.slice(0, 300)}`;
  return null;
}

const EVERY_ROLE = PEOPLE.length - 1;

/** What people send when all is well, for the operations that do most. */
const goodBodies = (b: Bench): Readonly<Record<string, Json>> =>
  JSON.parse(
    JSON.stringify({
      'POST /v1/submissions': contentFor(b.spool),
      'POST /v1/submissions/preview': contentFor(b.otherSpool),
      'POST /v1/submissions/{reference}/revisions': contentFor(b.spool),
      'POST /v1/submissions/{reference}/reviews': {
        decision: 'returned',
        query: { kind: 'reading', specimens: [1], question: 'Please look.' },
      },
      'POST /v1/submissions/{reference}/judgements': { verdict: 'plausible', words: 'As one would think.' },
      'POST /v1/submissions/{reference}/closure': { reason: 'Its tester has left.' },
      'POST /v1/queries/{id}/answer': { answer: 'As displayed.' },
      'POST /v1/drafts': { content: contentFor(b.spool) },
      'PUT /v1/drafts/{reference}': { content: contentFor(b.otherSpool) },
      'POST /v1/catalogue/makers': { ...MAKER, slug: 'other', name: 'Other' },
      'POST /v1/catalogue/lines': { ...LINE, slug: 'other', name: 'Other' },
      'POST /v1/catalogue/variants': { ...VARIANT, slug: 'other', size: 'other' },
      'POST /v1/catalogue/variants/{slug}/claims': CLAIM,
      'POST /v1/catalogue/spools': SPOOL,
      'PATCH /v1/catalogue/spools/{code}': { place: 'Another shop', reason: 'It was mistyped.' },
      'POST /v1/proposals': { kind: 'reidentification', spool: b.spool, variant: 'tern-40-moss', reason: 'The box holds another line.' },
      'POST /v1/catalogue/methods/{slug}/versions': { ...METHOD_VERSION, number: 2, effectiveFrom: '2026-06-01' },
      'POST /v1/schemes': { ...SCHEME, number: 2 },
      'POST /v1/editions': {
        slug: '2027',
        name: 'Next',
        scheme: { slug: '2026', number: 1 },
        opensOn: '2027-01-01',
        closesOn: '2027-12-31',
        methods: [],
      },
      'POST /v1/control-lines': { code: 'C1', name: 'Reference', lot: 'L', words: 'Kept dark.' },
      'POST /v1/control-pulls': {
        controlLine: 'C1',
        instrument: 'R1',
        method: 'straight-pull',
        benchDay: '2026-03-10',
        readings: [{ text: '84.1', unit: 'N' }],
      },
      'POST /v1/round-robins': {
        slug: 'spring',
        name: 'Spring',
        words: 'How far?',
        method: 'straight-pull',
        spools: [b.spool, b.otherSpool],
        specimens: 2,
        testers: [b.tester.accountId, b.otherTester.accountId],
      },
      'POST /v1/editions/{edition}/retests': { percent: 10 },
      'POST /v1/editions/{edition}/exclusions': { variant: VARIANT.slug, reason: 'other', words: 'Sold out.', effect: 'omitted' },
    }),
  ) as Record<string, Json>;

/** Asks so many times as everybody in turn, nobody included. */
export async function fuzzHouse(requests: number, seed: number, each: (answer: Answer, asked: number) => void): Promise<number> {
  // Its edition ranks what its methods yield, as the program sees to.
  const b = await setUpBench(undefined, FORCE_SCHEME.rules);
  try {
    const port = await listen(b);
    const description = (await b.t.call('get', '/v1/openapi.json').expect(200)).body as Description;
    const seen = ['2026', 'R1', 'M1', 'straight-pull', 'diameter', 'north-bay', 'tern-20-moss', b.spool, b.otherSpool, b.tester.accountId];
    const fuzzer = new Fuzzer(description, seed, seen, goodBodies(b));
    const people: Caller[] = [];
    for (const roles of PEOPLE) people.push(await b.t.caller(roles));
    const refused = PEOPLE.map(() => 0);
    for (let asked = 0; asked < requests; asked++) {
      // Every second one by somebody who may do everything, the others by each role and by nobody.
      const index = asked % 2 === 0 ? EVERY_ROLE : Math.floor(asked / 2) % (PEOPLE.length + 1);
      const answer = await fuzzer.ask(port, people[index]?.token ?? null);
      each(answer, asked);
      if (index === PEOPLE.length) continue;
      refused[index] = answer.status === 401 ? (refused[index] ?? 0) + 1 : 0;
      if ((refused[index] ?? 0) < MOST_REFUSED) continue;
      // A day later nobody is held off any more for what was guessed from this address.
      b.t.clock.time = new Date(b.t.clock.time.getTime() + 86_400_001);
      people[index] = await b.t.caller(PEOPLE[index] ?? []);
      refused[index] = 0;
    }
    return fuzzer.count;
  } finally {
    await b.t.close();
  }
}
