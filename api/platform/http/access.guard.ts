import { Injectable } from '@nestjs/common';
import type { CanActivate, ExecutionContext } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { timingSafeEqual } from 'node:crypto';
import { platformProblems } from '../errors/platform.errors.js';
import { Problem } from '../errors/problem.js';
import { ActorFinder } from './access.js';
import type { Actor, RequestWithActor } from './access.js';
import { ENDPOINT } from './endpoint.js';
import type { EndpointDeclaration } from './endpoint.js';

const SAFE_METHODS = new Set(['GET', 'HEAD', 'OPTIONS']);

/** Deny by default: an endpoint without a declaration answers nobody. */
@Injectable()
export class AccessGuard implements CanActivate {
  constructor(
    private readonly reflector: Reflector,
    private readonly actors: ActorFinder,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const declaration = this.reflector.get<EndpointDeclaration | undefined>(ENDPOINT, context.getHandler());
    if (!declaration) throw new Problem(platformProblems['access/forbidden'], 'This address declares no access.');
    if (declaration.allow === 'anyone') return true;
    const request = context.switchToHttp().getRequest<RequestWithActor>();
    const actor = await this.actors.find(request);
    if (!actor) {
      throw new Problem(platformProblems['access/not-signed-in'], undefined, [], { 'WWW-Authenticate': 'Bearer' });
    }
    requireCsrfToken(actor, request);
    requireRole(actor, declaration.allow);
    if (declaration.needsSession && actor.sessionKey === null) throw new Problem(platformProblems['access/session-needed']);
    request.actor = actor;
    return true;
  }
}

function requireCsrfToken(actor: Actor, request: RequestWithActor): void {
  if (actor.csrfToken === null || SAFE_METHODS.has(request.method)) return;
  const sent = Buffer.from(String(request.headers['x-csrf-token'] ?? ''));
  const expected = Buffer.from(actor.csrfToken);
  if (sent.length !== expected.length || !timingSafeEqual(sent, expected)) throw new Problem(platformProblems['access/csrf']);
}

function requireRole(actor: Actor, allow: Exclude<EndpointDeclaration['allow'], 'anyone'>): void {
  if (allow === 'signedIn' || allow.some((role) => actor.roles.includes(role))) return;
  throw new Problem(
    platformProblems['access/forbidden'],
    `This is for: ${allow.join(', ')}. You are: ${actor.roles.join(', ') || 'nobody yet'}.`,
  );
}
