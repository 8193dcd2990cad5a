import { createServer } from 'node:http';
import type { IncomingMessage, Server, ServerResponse } from 'node:http';

type Handle = (request: IncomingMessage, response: ServerResponse) => void;

/** Takes a request, or leaves it: then the answer is false, or `leave` is called later. */
export type TakeRequest = (request: IncomingMessage, response: ServerResponse, leave: () => void) => boolean;

/** A client has so many times as long for a whole request as for its head: the longest file comes over a slow line too. */
const HEADS_FOR_THE_WHOLE = 8;
/** How often slow connections are looked for while a head may still come. */
const LOOKS_FOR_A_HEAD = 3;
/** Longer than proxies keep a connection, so that they never send into one that we are closing. */
const KEPT_ALIVE_MS = 72_000;

/** The HTTP server before the framework: what is answered in a few steps is taken at the door, the rest is let in. */
export class FrontDoor {
  private take: TakeRequest = () => false;

  /** @param headWithinSeconds a client has so long to send the head of a request: slow connections do not take all places */
  constructor(private readonly headWithinSeconds: number) {}

  /**
   * @param take is asked first from now on
   * @param isEnding when it says so, each connection is closed behind its answer, so that clients go elsewhere and none is cut off
   */
  open(take: TakeRequest, isEnding: () => boolean): void {
    this.take = (request, response, leave) => {
      if (!isEnding()) return take(request, response, leave);
      response.setHeader('Connection', 'close');
      return false;
    };
  }

  /** @param handle what the framework does with a request */
  serverFor(handle: Handle): Server {
    const headWithinMs = Math.round(1000 * this.headWithinSeconds);
    const options = {
      headersTimeout: headWithinMs,
      requestTimeout: HEADS_FOR_THE_WHOLE * headWithinMs,
      keepAliveTimeout: KEPT_ALIVE_MS,
      connectionsCheckingInterval: Math.round(headWithinMs / LOOKS_FOR_A_HEAD),
    };
    return createServer(options, (request, response) => {
      if (!this.take(request, response, () => handle(request, response))) handle(request, response);
    });
  }
}
