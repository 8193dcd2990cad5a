import { NOT_ASKED } from '../support/sweep-routes.js';
import { ROUTES } from './route-table.js';
import { playDishonestTester } from '../support/dishonest-tester.js';
import type { Attempts, Play } from '../support/dishonest-tester.js';

let play: Play;
const sumOf = (routes: readonly [string, Attempts][], what: 'tried' | 'bytesThatDiffer') =>
  routes.reduce((sum, [, attempts]) => sum + attempts[what], 0);
beforeAll(async () => {
  play = await playDishonestTester();
});
afterAll(() => play.close());

test('over every route a dishonest tester reads the same bytes of a thick braid as of a thin nylon', () => {
  const routes = [...play.byRoute].filter(([route]) => !route.startsWith('('));
  expect(routes.filter(([, { bytesThatDiffer }]) => bytesThatDiffer > 0).map(([route, { first }]) => `${route}: ${first ?? ''}`)).toEqual(
    [],
  );
  const [attempts, bytes] = [sumOf(routes, 'tried'), sumOf(routes, 'bytesThatDiffer')];
  process.stdout.write(`A dishonest tester: ${attempts} attempts over ${routes.length} routes; bytes that differ: ${bytes}.\n`);
  expect(attempts).toBeGreaterThan(450);
});

test('every route is tried, but those that would end the play or tell of times', () => {
  const tried = new Set(play.byRoute.keys());
  expect(
    ROUTES.map(([route]) => route)
      .filter((route) => !tried.has(route))
      .sort(),
  ).toEqual(Object.keys(NOT_ASKED).sort());
});

test('the play is worth something: what is tried is answered, and what the reviewers do is done', () => {
  for (const route of [
    'POST /v1/submissions/preview',
    'POST /v1/submissions',
    'POST /v1/submissions?partial=true',
    'POST /v1/submissions/:reference/revisions',
    'POST /v1/submissions/:reference/traces',
    'POST /v1/submissions/:reference/taking-back',
    'POST /v1/drafts',
    'PUT /v1/drafts/:reference',
    'POST /v1/control-pulls',
    'POST /v1/round-robins/:slug/cells',
    'POST /v1/queries/:id/answer',
    '(a reviewer returns it)',
    '(a reviewer accepts it)',
    '(an editor draws)',
    '(an editor renames its line)',
    '(an editor renames it)',
    '(an editor re-identifies it)',
    'GET /v1/changes',
  ])
    expect([route, (play.byRoute.get(route)?.answered ?? 0) > 1]).toEqual([route, true]);
});

test('a reviewer reads of the same two what differs', () => {
  expect(play.reviewerSees.map((text) => /figures\/(far-from-label|unit-slip)/.test(text))).toContain(true);
});
