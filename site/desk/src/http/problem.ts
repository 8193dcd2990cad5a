/** The API refused; its words are written for people. */
import type { z } from 'zod';
import type { problemSchema } from '../../../../api/contract/problem.js';

export type ProblemAnswer = z.infer<typeof problemSchema>;
export type Fault = ProblemAnswer['errors'][number];

export class Refusal extends Error {
  readonly status: number;
  readonly code: string;
  readonly faults: readonly Fault[];
  /** The whole answer; some problems carry more, e.g. the text that another tab saved. */
  readonly answer: Readonly<Record<string, unknown>>;

  constructor(status: number, answer: Partial<ProblemAnswer>) {
    const what = answer.detail ?? answer.title ?? `The server answered ${status}.`;
    // Faults say themselves what to do.
    const isSaid = (answer.errors ?? []).length > 0;
    super(answer.explains === undefined || isSaid ? what : `${what.replace(/[^.!?]$/, '$&.')} ${answer.explains}`);
    this.status = status;
    this.code = answer.code ?? '';
    this.faults = answer.errors ?? [];
    this.answer = answer;
  }
}

/** Nothing came back: the network is away, or the server is. */
export class NoAnswer extends Error {
  constructor() {
    super('The server does not answer. Nothing is lost; try again when the network is back.');
  }
}
