import type { z } from 'zod';
import { askPassword } from './ask-password.js';
import { NoAnswer, Refusal } from './problem.js';
import type { ProblemAnswer } from './problem.js';
import { csrfToken } from './session.js';

export interface Question {
  /** Sent as JSON, but for a text, which is CSV, and a file, which is what it says. */
  readonly body?: unknown;
  /** Version that was seen. */
  readonly version?: number;
  /** The same key is carried out once, however often it is sent. */
  readonly key?: string;
  /** Where nobody has to be signed in. */
  readonly isOpen?: boolean;
}

type Method = 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';

/** A session that ended, or that another tab replaced. */
const ENDED = ['access/not-signed-in', 'access/csrf'];

/**
 * Asks the API. Where the session has ended, the password is asked for over the page and the question is put again.
 * @param schema of the answer, from the contract
 * @throws Refusal with the server's words, NoAnswer when nothing came back
 */
export async function ask<Answer>(schema: z.ZodType<Answer>, method: Method, path: string, question: Question = {}): Promise<Answer> {
  const response = await put(method, path, question);
  if (response.ok) return schema.parse(response.status === 204 ? null : await response.json());
  const answer = (await response.json().catch(() => ({}))) as Partial<ProblemAnswer>;
  if (question.isOpen !== true && ENDED.includes(answer.code ?? '')) {
    await askPassword();
    return ask(schema, method, path, question);
  }
  throw new Refusal(response.status, answer);
}

async function put(method: Method, path: string, { body, version, key }: Question): Promise<Response> {
  const isSent = typeof body === 'string' || body instanceof Blob;
  const type =
    body instanceof Blob && body.type !== ''
      ? body.type
      : typeof body === 'string' || body instanceof Blob
        ? 'text/csv'
        : 'application/json';
  const headers = {
    Accept: 'application/json',
    ...(method !== 'GET' && { 'X-CSRF-Token': csrfToken() }),
    ...(body !== undefined && { 'Content-Type': type }),
    ...(version !== undefined && { 'If-Match': `"${version}"` }),
    ...(key !== undefined && { 'Idempotency-Key': key }),
  };
  try {
    return await fetch(`/v1/${path}`, {
      method,
      headers,
      cache: 'no-store',
      ...(body !== undefined && { body: isSent ? body : JSON.stringify(body) }),
    });
  } catch {
    throw new NoAnswer();
  }
}
