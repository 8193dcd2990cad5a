/**
 * A tester who wants to know what is on a spool. The same script is played in two houses that are the same but for one line: what it is,
 * when it was obtained, what its label says, and what others found of it. Whatever an answer in one house says otherwise than in the
 * other would tell.
 */
import { dishonestScript, own, repeatedSteps } from './dishonest-script.js';
import type { NamedStep } from './dishonest-script.js';
import { sweepRoutes } from './sweep-routes.js';
import { buildTwoHouses } from './two-houses.js';

/** Headers that tell of the moment and of how much was asked, not of what was. */
const BY_THE_CLOCK = /^(x-request-id|date|ratelimit-.*)$/;

/**
 * Answers that bear times by the clock of the database, which is not that of the two houses: the times are taken out, and with them the ETag,
 * which is a digest of the same bytes and told nothing else where it once differed.
 */
const BY_THE_DATABASE = new Set(['GET /v1/changes']);

/** The same for the same thing: what is drawn by chance is named by when it came first. */
function told(
  route: string,
  answer: { status: number; headers: Record<string, string>; text?: string },
  names: Map<string, string>,
): string {
  const isTimed = BY_THE_DATABASE.has(route);
  const headers = Object.entries(answer.headers).filter(([name]) => !BY_THE_CLOCK.test(name) && !(isTimed && name === 'etag'));
  const body = isTimed ? answer.text?.replaceAll(/"at":"[^"]*"/g, '"at":"then"') : answer.text;
  const text = `${answer.status}\n${JSON.stringify(headers)}\n${body ?? ''}`;
  return text.replaceAll(/[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/g, (id) => {
    if (!names.has(id)) names.set(id, `id ${names.size}`);
    return names.get(id) ?? '';
  });
}

/** Of one route: how often it was tried, bytes that differed, where first, and how long it took in either house [ms]. */
export interface Attempts {
  tried: number;
  answered: number;
  bytesThatDiffer: number;
  first: string | null;
  readonly timesMs: readonly [number[], number[]];
}

const bytesApart = (one: string, other: string): number => {
  const [a, z] = [Buffer.from(one), Buffer.from(other)];
  let apart = Math.abs(a.length - z.length);
  for (let i = 0; i < Math.min(a.length, z.length); i++) if (a[i] !== z[i]) apart += 1;
  return apart;
};

/** Where two texts first differ, with some words before and after. */
function firstApart(one: string, other: string): string {
  let at = 0;
  while (one[at] === other[at]) at += 1;
  return `${one.slice(Math.max(0, at - 80), at + 120)} <> ${other.slice(Math.max(0, at - 80), at + 120)}`;
}

export interface Play {
  readonly byRoute: ReadonlyMap<string, Attempts>;
  /** The same looked at by a reviewer, who is to see a difference: what the play looks for is there. */
  readonly reviewerSees: readonly [string, string];
  close(): Promise<void>;
}

/** @param times how often the previews and looks are repeated, for their times */
export async function playDishonestTester(times = 1): Promise<Play> {
  const houses = await buildTwoHouses();
  const seen = [new Map<string, string>(), new Map<string, string>()] as const;
  const names = [new Map<string, string>(), new Map<string, string>()] as const;
  const byRoute = new Map<string, Attempts>();
  const repeated = Array.from({ length: times - 1 }, repeatedSteps).flat();
  for (const [route, call, name] of [...dishonestScript(), ...sweepRoutes(), ...repeated] as NamedStep[]) {
    const attempts = byRoute.get(route) ?? { tried: 0, answered: 0, bytesThatDiffer: 0, first: null, timesMs: [[], []] };
    byRoute.set(route, attempts);
    const texts: string[] = [];
    const isByOthers = route.startsWith('(');
    // Now the one first, now the other, so that what a machine does beside it falls on both.
    for (const index of attempts.tried % 2 === 0 ? ([0, 1] as const) : ([1, 0] as const)) {
      const began = performance.now();
      const answer = await call(houses[index], seen[index]);
      attempts.timesMs[index].push(performance.now() - began);
      if (answer.status < 400) attempts.answered += 1;
      const { reference } = (answer.body ?? {}) as { reference?: string };
      if (name !== undefined && reference !== undefined) seen[index].set(name, reference);
      if (!isByOthers) texts[index] = told(route, answer, names[index]);
    }
    attempts.tried += 1;
    if (isByOthers) continue;
    const apart = bytesApart(texts[0] ?? '', texts[1] ?? '');
    attempts.bytesThatDiffer += apart;
    if (apart > 0) attempts.first ??= firstApart(texts[0] ?? '', texts[1] ?? '');
  }
  const [one, other] = await Promise.all(
    houses.map(({ b }, index) => b.reviewer.call('get', `/v1/submissions/${own(seen[index as 0 | 1], 'day 3')}`)),
  );
  return {
    byRoute,
    reviewerSees: [one?.text ?? '', other?.text ?? ''],
    close: async () => {
      for (const { b } of houses) await b.t.close();
    },
  };
}
