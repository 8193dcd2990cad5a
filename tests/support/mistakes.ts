/** A story in which people make mistakes over HTTP: what is asked is counted, and a refusal must lead on to what is done in its place. */
import type { Response } from 'supertest';
import type { Caller, Method, TestApplication } from './test-application.js';
import { joinHouse, signIn } from './test-application.js';
import type { Role } from '../../api/contract/roles.js';

/** What is sent, and with what. */
export interface Sending {
  readonly body?: object | string;
  readonly type?: string;
  /** Version in If-Match; without it, that at which the thing at `read` stands. */
  readonly version?: number;
}

export type Ask = (method: Method, path: string, sending?: Sending) => Promise<Response>;

/** Somebody in the story. */
export interface Person {
  readonly accountId: string;
  readonly email: string;
  readonly ask: Ask;
  /** By the session of a browser, which alone may change what lets one in. */
  readonly browse: Ask;
}

/** A problem as the person who made the mistake reads it. */
interface Told {
  readonly code?: string;
  readonly detail?: string;
  readonly explains?: string;
  readonly errors?: readonly { readonly code: string; readonly detail: string }[];
}

export class Mistakes {
  requests = 0;
  /** Every refusal, by the mistake that it answers, with what it says. */
  readonly refusals: { readonly mistake: string; readonly says: string; wayOn: boolean }[] = [];
  /** Mistakes that no request shows to be one: they were taken, and put right afterwards. */
  readonly taken: string[] = [];

  constructor(readonly t: TestApplication) {}

  async join(secret: string, name: string, roles: readonly Role[]): Promise<Person> {
    const email = `${name.toLowerCase().replaceAll(/[^a-z]+/g, '.')}@bench.example`;
    this.requests += 3;
    const caller = await joinHouse((method, path) => this.t.call(method, path), secret, { email, displayName: name }, roles);
    return this.as(caller);
  }

  /** Somebody whose sessions and tokens ended signs in again. */
  async comeBack(person: Person, password: string, roles: readonly Role[]): Promise<Person> {
    this.requests += 2;
    return this.as(await signIn((method, path) => this.t.call(method, path), person, password, roles));
  }

  private as(caller: Caller): Person {
    const { accountId, email } = caller;
    const asking =
      (by: Caller['call']): Ask =>
      (method, path, sending) =>
        this.send(by, method, path, sending);
    return { accountId, email, ask: asking((m, p) => caller.call(m, p)), browse: asking((m, p) => caller.browse(m, p)) };
  }

  /** Without credentials. */
  readonly nobody: Ask = (method, path, sending) => this.send((m, p) => this.t.call(m, p), method, path, sending);

  /** What must be done; where it is refused the story ends, with the words of the refusal. */
  async done(asked: Promise<Response>): Promise<Response> {
    const answer = await asked;
    if (answer.status >= 400) throw new Error(`Refused: ${answer.status} ${answer.text}`);
    return answer;
  }

  /** A mistake that is refused with this code, its own or one of its faults', and what is done in its place, found in what the refusal says. */
  async refused(mistake: string, code: string, wrong: Promise<Response>, right: (told: Told) => Promise<unknown>): Promise<void> {
    const { status, body, text } = await wrong;
    const told = body as Told;
    const codes = [told.code, ...(told.errors ?? []).map((fault) => fault.code)];
    if (status < 400 || status >= 500 || !codes.includes(code)) throw new Error(`${mistake}: expected ${code}, found ${status} ${text}`);
    const says = [told.detail, told.explains, ...(told.errors ?? []).map(({ detail }) => detail)].join(' ');
    const refusal = { mistake, says, wayOn: false };
    this.refusals.push(refusal);
    await right(told);
    refusal.wayOn = true;
  }

  /** A mistake that is taken, as nothing can show it to be one, and how it is put right. */
  async corrected(mistake: string, right: () => Promise<unknown>): Promise<void> {
    await right();
    this.taken.push(mistake);
  }

  private async send(
    by: (method: Method, path: string) => ReturnType<TestApplication['call']>,
    method: Method,
    path: string,
    { body, type, version }: Sending = {},
  ): Promise<Response> {
    this.requests += 1;
    const call = by(method, path);
    if (version !== undefined) void call.set('If-Match', `"${version}"`);
    if (type !== undefined) void call.set('Content-Type', type);
    return body === undefined ? call : call.send(body);
  }
}
