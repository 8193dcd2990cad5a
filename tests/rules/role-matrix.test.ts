import { Controller, Get, Module, RequestMethod } from '@nestjs/common';
import { METHOD_METADATA, PATH_METADATA } from '@nestjs/common/constants.js';
import { ModulesContainer } from '@nestjs/core';
import { FastifyAdapter } from '@nestjs/platform-fastify';
import { Test } from '@nestjs/testing';
import { Endpoint } from '../../api/platform/http/endpoint.js';
import { requireDeclaredAccess } from '../../api/platform/http/require-declared-access.js';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import type { Caller } from '../support/test-application.js';
import { ROUTES } from './route-table.js';
import type { Who } from './route-table.js';

type Verb = 'get' | 'post' | 'put' | 'patch' | 'delete';
const PEOPLE = ['tester', 'reviewer', 'editor', 'admin'] as const;

let b: Bench;
let people: Record<(typeof PEOPLE)[number], Caller>;
beforeAll(async () => {
  b = await setUpBench();
  const admin = await b.t.caller(['admin']);
  people = { tester: b.tester, reviewer: b.reviewer, editor: b.editor, admin };
});
afterAll(() => b.t.close());

const slashed = (part: unknown): string => `/${String(part)}`.replace(/\/+/g, '/').replace(/(.)\/$/, '$1');

/** Every route that a controller of the application answers. */
function routesOfApplication(): string[] {
  const controllers = [...b.t.app.get(ModulesContainer).values()].flatMap((module) => [...module.controllers.values()]);
  const routes = controllers.flatMap(({ metatype }) => {
    if (typeof metatype !== 'function') return [];
    const prefix: unknown = Reflect.getMetadata(PATH_METADATA, metatype);
    return Object.entries(Object.getOwnPropertyDescriptors(metatype.prototype)).flatMap(([name, { value: handler }]) => {
      const path: string | undefined =
        name !== 'constructor' && typeof handler === 'function' ? (Reflect.getMetadata(PATH_METADATA, handler) as string) : undefined;
      if (path === undefined) return [];
      const verb = RequestMethod[Reflect.getMetadata(METHOD_METADATA, handler as object) as number];
      return [`${verb} ${slashed(`${slashed(prefix)}/${path === '/' ? '' : path}`)}`];
    });
  });
  return [...new Set(routes)].sort();
}

test('the table lists every route, and no other', () => {
  expect(routesOfApplication()).toEqual(ROUTES.map(([route]) => route).sort());
  expect(new Set(ROUTES.map(([route]) => route)).size).toBe(ROUTES.length);
});

const isAllowed = (who: Who, person: (typeof PEOPLE)[number] | null): boolean =>
  who === 'anyone' || (person !== null && (who === 'signedIn' || who.split(' ').includes(person)));

/** An address of the route at which nothing is found, so that the answer tells of access alone. */
const addressOf = (path: string): string => path.replace('*', 'none.json').replace(/:id\b/g, b.editionId).replace(/:\w+/g, 'none');

test.each(ROUTES)('%s answers %s', async (route, who) => {
  const [verb = '', path = ''] = route.split(' ');
  const method = verb.toLowerCase() as Verb;
  const refusals: Record<string, number> = {};
  const answers: Record<string, number> = {};
  for (const person of [null, ...PEOPLE]) {
    const caller = person === null ? b.t : people[person];
    const request = caller.call(method, addressOf(path)).set('If-Match', '"999"');
    const { status, body } = method === 'get' || method === 'delete' ? await request : await request.send({});
    const name = person ?? 'nobody';
    if (status === 401 || status === 403) refusals[name] = status;
    else answers[name] = status;
    if (status === 401 || status === 403) expect(body.code).toMatch(/^access\//);
    expect(status).toBeLessThan(500);
  }
  const refused = [null, ...PEOPLE].filter((person) => !isAllowed(who, person));
  expect(refusals).toEqual(Object.fromEntries(refused.map((person) => [person ?? 'nobody', person === null ? 401 : 403])));
  expect(Object.keys(answers)).toHaveLength(5 - refused.length);
});

/** Routes that change something and need no ETag, and why. */
const WITHOUT_ETAG: Readonly<Record<string, string>> = {
  'DELETE /v1/sessions/current': 'ends what the caller came with',
  'DELETE /v1/tokens/:id': 'revoking twice is the same as once',
  'DELETE /v1/accounts/:id/tokens/:token': 'revoking twice is the same as once',
  'DELETE /v1/invitations/:id': 'revoking twice is the same as once',
  'DELETE /v1/photos/:id': 'a photo never changes, it stands or not',
  'DELETE /v1/assignments/:id': 'an assignment never changes, it stands or not',
  'DELETE /v1/sessions': 'ends whatever is there',
  'DELETE /v1/sessions/:id': 'ending twice is the same as once',
  'DELETE /v1/accounts/:id/sessions': 'ends whatever is there',
  'DELETE /v1/editions/:edition/exclusions/:variant': 'the exclusion never changes, it is there or not',
  'DELETE /v1/editions/:edition/overrulings/:variant': 'the overruling is there or not, and each change of it is on record',
  'DELETE /v1/webhooks/:id': 'it is told or not, and what it is told of never changes',
  'DELETE /v1/webhooks/:id/pause': 'the pause is there or not',
  'DELETE /v1/editions/:edition/releases/:revision': 'an order never changes, it is there or not',
};

test('whatever replaces, changes or takes away needs If-Match: 428 without it, and with one that is old no change', async () => {
  const everyone = await b.t.caller(['tester', 'reviewer', 'editor', 'admin']);
  const changing = ROUTES.map(([route]) => route).filter((route) => /^(PUT|PATCH|DELETE) /.test(route));
  const answers: Record<string, number> = {};
  for (const route of changing) {
    const [verb = '', path = ''] = route.split(' ');
    const { status } = await everyone.call(verb.toLowerCase() as Verb, addressOf(path)).send(verb === 'DELETE' ? undefined : {});
    answers[route] = status;
  }
  const needing = changing.filter((route) => !(route in WITHOUT_ETAG));
  expect(needing.length).toBeGreaterThan(6);
  expect(Object.fromEntries(needing.map((route) => [route, answers[route]]))).toEqual(
    Object.fromEntries(needing.map((route) => [route, 428])),
  );
  expect(Object.keys(WITHOUT_ETAG).filter((route) => !changing.includes(route) || answers[route] === 428)).toEqual([]);
});

describe('a route that declares nothing stops the start', () => {
  const fine = { summary: 'Fine.', allow: 'anyone', answer: null } as const;

  async function appOf(controller: new () => object) {
    @Module({ controllers: [controller] })
    class OneController {}
    const module = await Test.createTestingModule({ imports: [OneController] }).compile();
    return module.createNestApplication(new FastifyAdapter());
  }

  test('by its name', async () => {
    @Controller('somewhere')
    class ForgetfulController {
      @Get()
      @Endpoint(fine)
      declared() {
        return 'declared';
      }
      @Get('open')
      forgotten() {
        return 'forgotten';
      }
    }
    const app = await appOf(ForgetfulController);
    expect(() => {
      requireDeclaredAccess(app);
    }).toThrow('ForgetfulController.forgotten');
    await app.close();
  });

  test('and only such a route', async () => {
    @Controller('somewhere')
    class CarefulController {
      @Get()
      @Endpoint(fine)
      declared() {
        return this.helper();
      }
      helper() {
        return 'no route';
      }
    }
    const app = await appOf(CarefulController);
    expect(() => {
      requireDeclaredAccess(app);
    }).not.toThrow();
    await app.close();
  });
});

describe("another person's things", () => {
  const content = (forceN: number) => contentFor(b.spool, { specimens: pulls(forceN) });

  test("another tester's submission is not found, nor handed in again", async () => {
    const mine = await b.tester.call('post', '/v1/submissions').send(content(61)).expect(201);
    const { reference } = mine.body as { reference: string };
    await b.tester.call('get', `/v1/submissions/${reference}`).expect(200);
    await b.otherTester.call('get', `/v1/submissions/${reference}`).expect(404);
    await b.otherTester.call('post', `/v1/submissions/${reference}/revisions`).set('If-Match', '"1"').send(content(62)).expect(404);
    const others = await b.otherTester.call('get', '/v1/submissions').expect(200);
    expect(others.text).not.toContain(reference);
  });

  test("another tester's draft is neither read, saved nor taken away", async () => {
    const begun = await b.tester
      .call('post', '/v1/drafts')
      .send({ content: content(63) })
      .expect(201);
    const { reference, version } = begun.body as { reference: string; version: number };
    for (const stranger of [b.otherTester, b.reviewer, b.editor]) await stranger.call('get', `/v1/submissions/${reference}`).expect(404);
    const as = (verb: Verb) => b.otherTester.call(verb, `/v1/drafts/${reference}`).set('If-Match', `"${version}"`);
    await as('put')
      .send({ content: content(64) })
      .expect(404);
    await as('delete').expect(404);
    await b.tester.call('get', `/v1/submissions/${reference}`).expect(200);
  });

  test("another tester's query is neither seen nor answered", async () => {
    const mine = await b.tester.call('post', '/v1/submissions').send(content(65)).expect(201);
    const { reference } = mine.body as { reference: string };
    const returned = await b.reviewer
      .call('post', `/v1/submissions/${reference}/reviews`)
      .set('If-Match', '"1"')
      .send({ decision: 'returned', query: { specimens: [1], question: 'Please look again.' } })
      .expect(201);
    const { id } = returned.body.queries[0] as { id: string };
    expect((await b.otherTester.call('get', '/v1/queries').expect(200)).text).not.toContain(id);
    await b.otherTester.call('post', `/v1/queries/${id}/answer`).send({ answer: 'Not mine.' }).expect(404);
    await b.tester.call('post', `/v1/queries/${id}/answer`).send({ answer: 'Mine.' }).expect(201);
  });

  test("another person's token is not listed and not revoked, not by an admin either", async () => {
    const mine = await b.tester.call('get', '/v1/tokens').expect(200);
    const { id } = mine.body.items[0] as { id: string };
    for (const stranger of [b.otherTester, people.admin]) {
      expect((await stranger.call('get', '/v1/tokens').expect(200)).text).not.toContain(id);
      await stranger.call('delete', `/v1/tokens/${id}`).expect(404);
    }
    await b.tester.call('get', '/v1/accounts/me').expect(200);
  });
});
