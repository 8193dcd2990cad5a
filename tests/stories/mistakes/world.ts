/** The house of the story: who is in it, and what they do again and again. */
import { pulls } from '../../support/bench.js';
import { inventPulls, pullRows } from '../../support/hand-in-csv.js';
import { Mistakes } from '../../support/mistakes.js';
import type { Person } from '../../support/mistakes.js';
import { createTestApplication } from '../../support/test-application.js';

/** Told by the first chapter. */
export const people = {} as Record<'admin' | 'editor' | 'reviewer' | 'tester' | 'leaver' | 'both', Person>;
/** Variant → blind code of its spool. */
export const codes = new Map<string, string>();
export const story = new Mistakes(await createTestApplication());

export const day = (date: string) => (story.t.clock.time = new Date(`${date}T12:00:00Z`));
export const make = async (by: Person, path: string, body: object) => (await story.done(by.ask('post', path, { body }))).body as any;
export const read = async (by: Person, path: string) => (await story.done(by.ask('get', path))).body as any;
export const versionOf = async (by: Person, path: string) => (await read(by, path)).version as number;
/** Changes a thing at the version that it stands at. */
export const change = async (by: Person, path: string, body: object, at = path, method: 'patch' | 'put' | 'post' = 'patch') =>
  (await story.done(by.ask(method, path, { body, version: await versionOf(by, at) }))).body as any;

export const claim = (text: string, unit = 'lbf') => ({ basis: 'average', printed: { text, unit }, seenOn: '2026-01-04', source: 'label' });
export const BOARD = '/v1/editions/2026/board';
export const EDITION = '/v1/bench/editions/2026';
/** Opens or closes the edition. */
export const step = async (name: 'opening' | 'closure') =>
  people.editor.ask('post', `/v1/editions/2026/${name}`, { version: await versionOf(people.editor, EDITION) });

const MEAN_N = { 'quay-20': 91, 'quay-30': 140, 'quay-40': 176 } as const;
export type Slug = keyof typeof MEAN_N;
export const SLUGS = Object.keys(MEAN_N) as Slug[];
export const rowsOf = (slug: Slug, seed: number, { unit = 'N', per = 1, benchDay = '2026-01-19', instrument = 'gauge-1' } = {}) =>
  pullRows(
    { edition: '2026', spool: codes.get(slug)!, instrument, benchDay },
    'straight-pull',
    inventPulls(MEAN_N[slug] / per, 'untreated', seed),
    unit,
  );
export const sendFile = (by: Person, body: string, path = '/v1/submissions') => by.ask('post', path, { body, type: 'text/csv' });
interface HandedIn {
  submissions: { reference: string; findings: { code: string; message: string }[] }[];
}
export const handedIn = async (by: Person, body: string) => ((await story.done(sendFile(by, body))).body as HandedIn).submissions;

/** One submission by JSON. */
export const content = (slug: Slug, forceN: number, more: object = {}) => ({
  edition: '2026',
  spool: codes.get(slug),
  method: 'straight-pull',
  methodVersion: 1,
  benchDay: '2026-01-19',
  zone: 'Europe/Lisbon',
  instruments: ['gauge-1'],
  ambient: { temperature: { value: '21.5', unit: '°C' }, humidityPercent: '55' },
  specimens: pulls(forceN),
  ...more,
});
export const handIn = (by: Person, body: object) => by.ask('post', '/v1/submissions', { body });
export const reference = async (by: Person, body: object) => (await story.done(handIn(by, body))).body.reference as string;

export interface Seen {
  readonly version: number;
  readonly state: string;
  readonly findings: readonly { id: string; code: string; severity: string }[];
}
export const see = (name: string) => read(people.reviewer, `/v1/submissions/${name}`) as Promise<Seen>;
export const review = (name: string, version: number, body: object) =>
  people.reviewer.ask('post', `/v1/submissions/${name}/reviews`, { body, version });
export const accept = async (name: string): Promise<void> => {
  const { version, findings } = await see(name);
  const resolutions = findings
    .filter(({ severity }) => severity === 'held')
    .map(({ id }) => ({ finding: id, words: 'Looked at; it stands.' }));
  await story.done(review(name, version, { decision: 'accepted', resolutions }));
};
export const sendBack = async (name: string, question = 'What does the film show for specimen 3?') =>
  story.done(review(name, (await see(name)).version, { decision: 'returned', query: { specimens: [3], question } }));
