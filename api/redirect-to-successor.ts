import { AN_HOUR } from './platform/http/headers/cache-lifetimes.js';
import type { TakeRequest } from './platform/http/front-door.js';

/** Sends whoever asks for what has a successor to that, before anything else is looked at (RFC 9110, 15.4.9). */
export const redirectToSuccessor =
  (leading: (address: string) => string | null, take: TakeRequest): TakeRequest =>
  (request, response, leave) => {
    const isRead = request.method === 'GET' || request.method === 'HEAD';
    const successor = isRead ? leading(request.url ?? '') : null;
    if (successor === null) return take(request, response, leave);
    response.writeHead(308, { Location: successor, 'Cache-Control': AN_HOUR, 'Access-Control-Allow-Origin': '*' }).end();
    return true;
  };
