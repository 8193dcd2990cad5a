/** Many clients at once on the same things, over real connections to a real server. Loopback only, and at most as many requests as asked for. */
import { randomUUID } from 'node:crypto';
import { Agent, request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { contentFor, pulls } from './bench.js';
import type { Bench } from './bench.js';
import type { Caller } from './test-application.js';

interface Answer {
  readonly status: number;
  readonly text: string;
}

interface Sending {
  readonly path: string;
  readonly token: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body: string;
  readonly type?: string;
  /** Where the connection is torn: in the middle of the body, or after it, before the answer. */
  readonly tornAt?: 'body' | 'answer';
}

const AGENT = new Agent({ keepAlive: true, maxSockets: 50 });

/** Starts to listen on a free loopback port. */
export async function listen({ t }: Bench): Promise<number> {
  await t.app.listen(0, '127.0.0.1');
  return (t.app.getHttpServer().address() as AddressInfo).port;
}

/** @returns the answer; null where the connection was torn */
export function post(
  port: number,
  { path, token, headers = {}, body, type = 'application/json', tornAt }: Sending,
): Promise<Answer | null> {
  return new Promise((done, fail) => {
    const sent = request({
      agent: tornAt ? false : AGENT,
      host: '127.0.0.1',
      port,
      path,
      method: 'POST',
      headers: { Authorization: `Bearer ${token}`, 'Content-Type': type, 'Content-Length': String(Buffer.byteLength(body)), ...headers },
    });
    sent.on('response', (response) => {
      let text = '';
      response.setEncoding('utf8');
      response.on('data', (chunk: string) => (text += chunk));
      response.on('end', () => {
        done({ status: response.statusCode ?? 0, text });
      });
      response.on('error', () => {
        done(null);
      });
    });
    sent.on('error', (error) => {
      if (tornAt) done(null);
      else fail(error);
    });
    if (tornAt === 'body') {
      sent.write(body.slice(0, body.length / 2));
      setTimeout(() => sent.destroy(), 1);
    } else {
      sent.end(body);
      // Now before, now during, now after the work of the server.
      if (tornAt === 'answer') setTimeout(() => sent.destroy(), 1 + Math.floor(Math.random() * 25));
    }
  });
}

/** Does all of the work, so many at a time. */
export async function atOnce<Item>(items: readonly Item[], most: number, work: (item: Item) => Promise<void>): Promise<void> {
  let next = 0;
  const worker = async (): Promise<void> => {
    for (let index = next++; index < items.length; index = next++) await work(items[index] as Item);
  };
  await Promise.all(Array.from({ length: most }, worker));
}

const body = (b: Bench, force: number) => contentFor(b.spool, { specimens: pulls(force, 5) });

/** Hands in so many submissions of one tester. */
export async function submissionsToRace(b: Bench, port: number, count: number): Promise<string[]> {
  const references: string[] = [];
  await atOnce(
    Array.from({ length: count }, (_, i) => i),
    4,
    async (i) => {
      const answer = await post(port, { path: '/v1/submissions', token: b.tester.token, body: JSON.stringify(body(b, 40 + i * 0.013)) });
      references.push((JSON.parse(answer?.text ?? '{}') as { reference: string }).reference);
    },
  );
  return references;
}

export interface RaceOutcome {
  readonly requests: number;
  /** By status. */
  readonly statuses: Readonly<Record<string, number>>;
  /** Submissions without exactly one winner. */
  readonly without: readonly string[];
  readonly seconds: number;
}

/** Fifty clients accept, return, refuse and add to the same submissions, all of them as they were first: one of each is done, no more, no less. */
export async function raceStateChanges(b: Bench, port: number, references: readonly string[], clients: number): Promise<RaceOutcome> {
  const reviewers: Caller[] = [];
  for (let i = 0; i < 5; i += 1) reviewers.push(await b.t.caller(['reviewer']));
  const trace = 'Extension (mm),Force (N)\n0,0\n1,10\n2,20\n3,30\n4,40\n5,41\n';
  const findings = new Map<string, string[]>();
  await atOnce(references, 4, async (reference) => {
    const seen = await b.reviewer.call('get', `/v1/submissions/${reference}`);
    findings.set(
      reference,
      (seen.body as { findings: { id: string; severity: string }[] }).findings
        .filter(({ severity }) => severity === 'held')
        .map(({ id }) => id),
    );
  });
  const sendings = references.flatMap((reference) =>
    Array.from({ length: clients }, (_, client): { reference: string; sending: Sending } => {
      const token = reviewers[client % reviewers.length]?.token ?? '';
      const headers = { 'If-Match': '"1"' };
      const reviews = { path: `/v1/submissions/${reference}/reviews`, token, headers };
      const resolutions = (findings.get(reference) ?? []).map((finding) => ({ finding, words: 'Stands.' }));
      const all: Sending[] = [
        { ...reviews, body: JSON.stringify({ decision: 'accepted', resolutions }) },
        {
          ...reviews,
          body: JSON.stringify({ decision: 'returned', query: { kind: 'other', specimens: [1], question: 'What does the film show?' } }),
        },
        { ...reviews, body: JSON.stringify({ decision: 'refused', reason: 'Twice.' }) },
        { path: `/v1/submissions/${reference}/traces?specimen=1`, token: b.tester.token, headers, body: trace, type: 'text/csv' },
      ];
      return { reference, sending: all[client % all.length] ?? all[0]! };
    }),
  );
  const statuses: Record<string, number> = {};
  const winners = new Map(references.map((reference) => [reference, 0]));
  const began = performance.now();
  // Neighbours in the row are on one submission: what is sent at once is on the same thing.
  await atOnce(sendings, clients, async ({ reference, sending }) => {
    const status = (await post(port, sending))?.status ?? 0;
    statuses[status] = (statuses[status] ?? 0) + 1;
    if (status === 201) winners.set(reference, (winners.get(reference) ?? 0) + 1);
  });
  const seconds = (performance.now() - began) / 1000;
  return {
    requests: sendings.length,
    statuses,
    without: [...winners].filter(([, count]) => count !== 1).map(([reference]) => reference),
    seconds,
  };
}

export interface RetryOutcome {
  readonly posts: number;
  readonly torn: number;
  /** Keys whose whole answers differ, or that have none. */
  readonly without: readonly string[];
  readonly seconds: number;
}

/** Each post is sent five times under its key, four of them over connections that are torn; the last waits for its answer, twice. */
export async function retriedPosts(b: Bench, port: number, count: number): Promise<RetryOutcome> {
  const without: string[] = [];
  let torn = 0;
  const began = performance.now();
  await atOnce(
    Array.from({ length: count }, (_, i) => i),
    10,
    async (i) => {
      const key = randomUUID();
      const sending: Sending = {
        path: '/v1/submissions',
        token: b.tester.token,
        headers: { 'Idempotency-Key': key },
        body: JSON.stringify(body(b, 100 + i * 0.017)),
      };
      const answers: Answer[] = [];
      for (const tornAt of ['answer', 'body', 'answer', undefined, undefined] as const) {
        let answer = await post(port, { ...sending, ...(tornAt ? { tornAt } : {}) });
        // Still being worked on, from a connection that is gone: ask again a little later.
        for (let again = 0; answer?.status === 409 && !tornAt && again < 100; again += 1) {
          await new Promise((wait) => setTimeout(wait, 20));
          answer = await post(port, sending);
        }
        if (answer) answers.push(answer);
        else torn += 1;
      }
      const done = answers.filter(({ status }) => status === 201);
      if (done.length < 2 || new Set(done.map(({ text }) => text)).size !== 1)
        without.push(`${i}: ${answers.map(({ status }) => status).join(' ')}`);
    },
  );
  return { posts: count, torn, without, seconds: (performance.now() - began) / 1000 };
}
