import { appendFileSync } from 'node:fs';
import type { Test } from 'supertest';

/** One request that was answered as asked, and its answer. */
export interface Exchange {
  readonly method: string;
  readonly path: string;
  readonly sent: unknown;
  readonly answer: unknown;
}

/** Where exchanges are noted while examples are taken (.config/take-examples.ts); nowhere otherwise. */
const NOTES = process.env['NOTE_EXCHANGES'] ?? '';

/** Lets a call be noted when it is answered with JSON, or without a body, as asked. */
export function noting(method: string, path: string, test: Test): Test {
  if (NOTES === '') return test;
  return test.on('response', (answer: { status: number; body: unknown }) => {
    if (answer.status >= 300) return;
    const sent = (test as unknown as { _data?: unknown })._data;
    const exchange: Exchange = {
      method,
      path: path.split('?')[0] ?? '',
      sent: typeof sent === 'object' ? sent : null,
      answer: answer.body,
    };
    appendFileSync(NOTES, `${JSON.stringify(exchange)}\n`);
  });
}
