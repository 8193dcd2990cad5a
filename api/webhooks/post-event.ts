import { request as overHttp } from 'node:http';
import { request as overHttps } from 'node:https';
import type { LookupFunction } from 'node:net';
import { Webhook } from 'standardwebhooks';
import type { WebhookEvent } from '../contract/endpoints/webhooks.js';
import { addressFor, resolveHost } from './far-address.js';
import type { Resolve, Resolved } from './far-address.js';

export interface PostOptions {
  /** [ms] From the first step to the status of the answer. */
  readonly withinMs: number;
  readonly nearAllowed: boolean;
  readonly resolve?: Resolve;
}

export interface Posted {
  readonly isDelivered: boolean;
  /** Null where no answer came. */
  readonly status: number | null;
  /** What happened, a sentence. */
  readonly words: string;
  readonly tookMs: number;
}

/**
 * Posts an event, signed after the Standard Webhooks conventions (webhook-id, webhook-timestamp, webhook-signature). Nothing is followed
 * elsewhere, and nothing is read of the answer but its status. Whatever goes wrong is an answer, never an exception.
 * @param id the same for every attempt at the same event: receivers drop what they have
 */
export async function postEvent(
  { address, secret }: { readonly address: string; readonly secret: string },
  id: string,
  event: WebhookEvent,
  { withinMs, nearAllowed, resolve = resolveHost }: PostOptions,
): Promise<Posted> {
  const start = performance.now();
  const told = (status: number | null, words: string): Posted => ({
    isDelivered: status !== null && status >= 200 && status < 300,
    status,
    words,
    tookMs: Math.round(performance.now() - start),
  });
  const url = new URL(address);
  try {
    const signal = AbortSignal.timeout(withinMs);
    const place = await until(signal, addressFor(url, nearAllowed, resolve));
    const status = await send(url, place, signed(secret, id, event), signal);
    return told(status, `It answered with ${status}.`);
  } catch (error) {
    const { name, message } = error as Error;
    return told(null, name === 'TimeoutError' || name === 'AbortError' ? `No answer within ${withinMs / 1000} s.` : message);
  }
}

interface Signed {
  readonly body: string;
  readonly headers: Readonly<Record<string, string>>;
}

function signed(secret: string, id: string, event: WebhookEvent): Signed {
  const body = JSON.stringify(event);
  // The time of this attempt: receivers refuse what is old, so that nobody plays it to them again.
  const now = new Date();
  const headers = {
    'Content-Type': 'application/json',
    'User-Agent': 'Fairpull',
    'webhook-id': id,
    'webhook-timestamp': String(Math.floor(now.getTime() / 1000)),
    'webhook-signature': new Webhook(secret).sign(id, now, body),
  };
  return { body, headers };
}

/** An answer, or what ends the waiting for it: finding an address cannot be called off. */
const until = <Answer>(signal: AbortSignal, answer: Promise<Answer>): Promise<Answer> =>
  new Promise((resolve, reject) => {
    signal.addEventListener('abort', () => reject(signal.reason as Error), { once: true });
    answer.then(resolve, reject);
  });

function send(url: URL, { address, family }: Resolved, { body, headers }: Signed, signal: AbortSignal): Promise<number> {
  const request = url.protocol === 'https:' ? overHttps : overHttp;
  const lookup: LookupFunction = (_host, options, done) => {
    if (options.all) done(null, [{ address, family }]);
    else done(null, address, family);
  };
  return new Promise((resolve, reject) => {
    const options = { method: 'POST', headers: { ...headers, 'Content-Length': Buffer.byteLength(body) }, agent: false, lookup };
    const posting = request(url, { ...options, signal }, (answer) => {
      resolve(answer.statusCode ?? 0);
      answer.destroy();
    });
    posting.on('error', reject);
    posting.end(body);
  });
}
