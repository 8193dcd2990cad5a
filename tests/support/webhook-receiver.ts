import { createServer } from 'node:http';
import type { IncomingHttpHeaders, Server, ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

/** What it does with the next event that comes. */
export type Manner = 'takes' | 'fails' | 'hangs' | 'answersLate' | 'breaksOff' | 'isGone' | 'sendsElsewhere';

export interface Received {
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
  readonly manner: Manner;
}

/** Somebody who is told of changes, and is not always well. */
export class WebhookReceiver {
  readonly received: Received[] = [];
  manners: Manner[] = [];
  /** What happens, once, before the next is answered. */
  meanwhile: (() => PromiseLike<unknown>) | undefined;
  private server: Server | undefined;
  private port = 0;
  private readonly open: ServerResponse[] = [];

  get address(): string {
    return `http://127.0.0.1:${this.port}/told`;
  }

  /** At the port that it had before, if it had one. */
  async start(): Promise<void> {
    this.server = createServer((request, response) => {
      let body = '';
      request.on('data', (part: Buffer) => (body += part.toString()));
      request.on('end', () => {
        const manner = this.manners.shift() ?? 'takes';
        this.received.push({ headers: request.headers, body, manner });
        const happening = this.meanwhile?.();
        this.meanwhile = undefined;
        if (happening) void happening.then(() => this.answer(manner, response));
        else this.answer(manner, response);
      });
    });
    await new Promise<void>((listening) => this.server?.listen(this.port, '127.0.0.1', listening));
    this.port = (this.server.address() as AddressInfo).port;
  }

  private answer(manner: Manner, response: ServerResponse): void {
    if (manner === 'takes') response.writeHead(204).end();
    if (manner === 'fails') response.writeHead(500).end('no');
    if (manner === 'isGone') response.writeHead(410).end();
    if (manner === 'sendsElsewhere') response.writeHead(307, { Location: this.address }).end();
    if (manner === 'breaksOff') response.destroy();
    // It answers when whoever asked has gone.
    if (manner === 'answersLate') response.on('close', () => response.writableEnded || response.end());
    if (manner === 'hangs') this.open.push(response);
  }

  /** As a process that is killed: nothing is answered any more. */
  async kill(): Promise<void> {
    this.server?.closeAllConnections();
    await new Promise((closed) => this.server?.close(closed));
  }
}
