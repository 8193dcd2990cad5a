import { Body, Controller, Delete, Get, Inject, Ip, Param, Patch, Post, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import { Clock } from '../platform/clock/clock.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { CurrentActor, SESSION_COOKIE } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { isBehindTls } from '../platform/http/headers/security-headers.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { IfMatch } from '../platform/http/headers/if-match.js';
import { networkOf } from '../platform/http/limits/network.js';
import { AcceptInvitation } from './accept-invitation.js';
import { toAccount, toToken } from './account.js';
import { AccountsReadModel } from './accounts.read-model.js';
import * as schemas from '../contract/endpoints/accounts.js';
import { ChangeAccount } from './change-account.js';
import { EndAccess } from './end-access.js';
import { Invite } from './invite.js';
import { MakeToken } from './make-token.js';
import { SignIn } from './sign-in.js';

@Controller('v1')
export class AccountsController {
  constructor(
    private readonly signIn: SignIn,
    private readonly inviting: Invite,
    private readonly acceptance: AcceptInvitation,
    private readonly change: ChangeAccount,
    private readonly tokens: MakeToken,
    private readonly ending: EndAccess,
    private readonly accounts: AccountsReadModel,
    private readonly clock: Clock,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  @Post('sessions')
  @Endpoint({ summary: 'Sign in: opens a session and sets its cookie.', allow: 'anyone', status: 201, answer: schemas.sessionResponse })
  async postSession(
    @Body({ schema: schemas.signInRequest }) input: schemas.SignInRequest,
    @Ip() address: string,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const { secret, expiresAt, session } = await this.signIn.run(input, networkOf(address));
    void reply.setCookie(SESSION_COOKIE, secret, {
      httpOnly: true,
      secure: isBehindTls(this.config),
      sameSite: 'lax',
      path: '/',
      // How long, not until when: the clock of the device may be wrong.
      maxAge: Math.floor((expiresAt.getTime() - this.clock.now().getTime()) / 1000),
    });
    return session;
  }

  @Delete('sessions/current')
  @Endpoint({ summary: 'Sign out.', allow: 'signedIn', status: 204, answer: null })
  async deleteSession(@CurrentActor() actor: Actor, @Res({ passthrough: true }) reply: FastifyReply): Promise<void> {
    await this.ending.ownSession(actor);
    void reply.clearCookie(SESSION_COOKIE, { path: '/' });
  }

  @Get('accounts/me')
  @Endpoint({ summary: 'Your own account.', allow: 'signedIn', answer: schemas.accountResponse })
  async getMe(@CurrentActor() actor: Actor) {
    const account = await this.accounts.byId(actor.accountId);
    if (!account) throw new Problem(platformProblems['request/not-found']);
    return { ...toAccount(account), roles: actor.roles };
  }

  @Get('accounts')
  @Endpoint({ summary: 'All accounts.', allow: ['admin'], answer: schemas.accountsResponse })
  async getAccounts() {
    return { items: (await this.accounts.all()).map(toAccount), nextCursor: null };
  }

  @Get('testers')
  @Endpoint({ summary: 'Who tests, by name: for whoever plans work at the bench.', allow: ['editor'], answer: schemas.testersResponse })
  async getTesters() {
    return { items: await this.accounts.testers(), nextCursor: null };
  }

  @Patch('accounts/:id')
  @Endpoint({ summary: 'Give or take roles, disable an account.', allow: ['admin'], answer: schemas.accountResponse, needsIfMatch: true })
  patchAccount(
    @CurrentActor() actor: Actor,
    @Param('id', { schema: schemas.idParameter }) id: string,
    @IfMatch() version: number,
    @Body({ schema: schemas.accountChange }) change: schemas.AccountChange,
  ) {
    return this.change.run(actor, id, version, change);
  }

  @Post('invitations')
  @Endpoint({
    summary: 'Invite somebody; the secret is shown once.',
    allow: ['admin'],
    status: 201,
    answer: schemas.invitationResponse,
    isSecret: true,
  })
  postInvitation(@CurrentActor() actor: Actor, @Body({ schema: schemas.invitationRequest }) input: schemas.InvitationRequest) {
    return this.inviting.run(actor, input);
  }

  @Post('invitations/:secret/acceptance')
  @Endpoint({ summary: 'Accept an invitation: makes the account.', allow: 'anyone', status: 201, answer: schemas.accountResponse })
  postAcceptance(
    @Param('secret') secret: string,
    @Body({ schema: schemas.acceptanceRequest }) input: schemas.AcceptanceRequest,
    @Ip() address: string,
  ) {
    return this.acceptance.run(secret, input, networkOf(address));
  }

  @Post('tokens')
  @Endpoint({
    summary: 'Make a bearer token; it is shown once.',
    allow: 'signedIn',
    status: 201,
    answer: schemas.tokenResponse,
    needsSession: true,
    isSecret: true,
  })
  postToken(@CurrentActor() actor: Actor, @Body({ schema: schemas.tokenRequest }) input: schemas.TokenRequest) {
    return this.tokens.run(actor, input);
  }

  @Get('tokens')
  @Endpoint({ summary: 'Your tokens, without their secrets.', allow: 'signedIn', answer: schemas.tokensResponse })
  async getTokens(@CurrentActor() actor: Actor) {
    return { items: (await this.accounts.tokensOf(actor.accountId)).map(toToken), nextCursor: null };
  }

  @Delete('tokens/:id')
  @Endpoint({ summary: 'Revoke one of your tokens.', allow: 'signedIn', status: 204, answer: null })
  deleteToken(@CurrentActor() actor: Actor, @Param('id', { schema: schemas.idParameter }) id: string) {
    return this.ending.token(actor, actor.accountId, id);
  }
}
