import { createParamDecorator } from '@nestjs/common';
import type { ExecutionContext } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import type { Role } from '../../contract/roles.js';

/** Carries the secret of a session. */
export const SESSION_COOKIE = 'fairpull_session';

/** Who asks. */
export interface Actor {
  readonly accountId: string;
  readonly displayName: string;
  readonly roles: readonly Role[];
  /** Session's CSRF token; null for a bearer token. */
  readonly csrfToken: string | null;
  /** How they came: a browser's session (its key) or a program's token. */
  readonly sessionKey: string | null;
}

/** Who may call an endpoint: anyone, anybody signed in, or holders of one of the roles. */
export type Access = 'anyone' | 'signedIn' | readonly Role[];

export interface RequestWithActor extends FastifyRequest {
  actor?: Actor;
}

/** Finds who asks from the request's cookie or bearer token; given by the accounts feature. */
export abstract class ActorFinder {
  abstract find(request: FastifyRequest): Promise<Actor | null>;
}

/** The actor of the request; only on endpoints that are not for anyone. */
export const CurrentActor = createParamDecorator((_: unknown, context: ExecutionContext): Actor => {
  const actor = context.switchToHttp().getRequest<RequestWithActor>().actor;
  if (!actor) throw new Error('CurrentActor stands on an endpoint that anyone may call');
  return actor;
});
