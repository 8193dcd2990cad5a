import { Body, Controller, Delete, Get, Ip, Param, Post } from '@nestjs/common';
import { Clock } from '../platform/clock/clock.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { networkOf } from '../platform/http/limits/network.js';
import { toRoles, toToken } from './account.js';
import { AccountsReadModel } from './accounts.read-model.js';
import * as schemas from '../contract/endpoints/accounts.js';
import { AskForReset } from './ask-for-reset.js';
import { ChangePassword } from './change-password.js';
import { EndAccess } from './end-access.js';
import { MakePasswordReset } from './make-password-reset.js';
import { ResetPassword } from './reset-password.js';

@Controller('v1')
export class CredentialsController {
  constructor(
    private readonly change: ChangePassword,
    private readonly asking: AskForReset,
    private readonly resets: MakePasswordReset,
    private readonly resetting: ResetPassword,
    private readonly ending: EndAccess,
    private readonly accounts: AccountsReadModel,
    private readonly clock: Clock,
  ) {}

  @Post('accounts/me/password-changes')
  @Endpoint({
    summary: 'Change your own password; your other sessions end.',
    allow: 'signedIn',
    status: 204,
    answer: null,
    needsSession: true,
  })
  postPasswordChange(@CurrentActor() actor: Actor, @Body({ schema: schemas.passwordChange }) change: schemas.PasswordChange) {
    return this.change.run(actor, change);
  }

  @Post('accounts/:id/password-resets')
  @Endpoint({
    summary: 'Make a one-time address at which somebody sets a new password; it is shown once, and mailed if the house has a mail server.',
    allow: ['admin'],
    status: 201,
    answer: schemas.passwordResetResponse,
    needsSession: true,
    isSecret: true,
  })
  postPasswordReset(@CurrentActor() actor: Actor, @Param('id', { schema: schemas.idParameter }) id: string) {
    return this.resets.run(actor, id);
  }

  @Post('password-resets')
  @Endpoint({
    summary: 'Have an address to set a new password mailed to you. The answer is the same whether there is an account or not.',
    allow: 'anyone',
    status: 204,
    answer: null,
  })
  postLostPassword(@Body({ schema: schemas.lostPasswordRequest }) { email }: schemas.LostPasswordRequest, @Ip() address: string) {
    return this.asking.run(email, networkOf(address));
  }

  @Post('password-resets/:secret/password')
  @Endpoint({ summary: 'Set the password that a reset promised; sessions and tokens end.', allow: 'anyone', status: 204, answer: null })
  postNewPassword(
    @Param('secret') secret: string,
    @Body({ schema: schemas.newPassword }) input: { password: string },
    @Ip() address: string,
  ) {
    return this.resetting.run(secret, input.password, networkOf(address));
  }

  @Get('sessions')
  @Endpoint({ summary: 'Where you are signed in.', allow: 'signedIn', answer: schemas.sessionsResponse })
  async getSessions(@CurrentActor() actor: Actor) {
    const rows = await this.accounts.sessionsOf(actor.accountId, this.clock.now());
    const items = rows.map(({ id, tokenHash, network, createdAt, expiresAt }) => ({
      id,
      network,
      createdAt: createdAt.toISOString(),
      expiresAt: expiresAt.toISOString(),
      isCurrent: tokenHash === actor.sessionKey,
    }));
    return { items, nextCursor: null };
  }

  @Delete('sessions')
  @Endpoint({ summary: 'Sign out everywhere.', allow: 'signedIn', status: 204, answer: null })
  deleteSessions(@CurrentActor() actor: Actor) {
    return this.ending.sessions(actor, actor.accountId, null);
  }

  @Delete('sessions/:id')
  @Endpoint({ summary: 'End one of your sessions.', allow: 'signedIn', status: 204, answer: null })
  deleteOneSession(@CurrentActor() actor: Actor, @Param('id', { schema: schemas.idParameter }) id: string) {
    return this.ending.sessions(actor, actor.accountId, id);
  }

  @Delete('accounts/:id/sessions')
  @Endpoint({ summary: 'End all sessions of an account.', allow: ['admin'], status: 204, answer: null })
  deleteSessionsOf(@CurrentActor() actor: Actor, @Param('id', { schema: schemas.idParameter }) id: string) {
    return this.ending.sessions(actor, id, null);
  }

  @Get('accounts/:id/tokens')
  @Endpoint({ summary: 'Tokens of an account, without their secrets.', allow: ['admin'], answer: schemas.tokensResponse })
  async getTokensOf(@Param('id', { schema: schemas.idParameter }) id: string) {
    return { items: (await this.accounts.tokensOf(id)).map(toToken), nextCursor: null };
  }

  @Delete('accounts/:id/tokens/:token')
  @Endpoint({ summary: 'Revoke a token of an account.', allow: ['admin'], status: 204, answer: null })
  deleteTokenOf(
    @CurrentActor() actor: Actor,
    @Param('id', { schema: schemas.idParameter }) id: string,
    @Param('token', { schema: schemas.idParameter }) token: string,
  ) {
    return this.ending.token(actor, id, token);
  }

  @Get('invitations')
  @Endpoint({ summary: 'Invitations that are still open, without their secrets.', allow: ['admin'], answer: schemas.invitationsResponse })
  async getInvitations() {
    const rows = await this.accounts.openInvitations(this.clock.now());
    const items = rows.map(({ id, roles, note, createdAt, expiresAt }) => ({
      id,
      roles: toRoles(roles),
      note,
      createdAt: createdAt.toISOString(),
      expiresAt: expiresAt.toISOString(),
    }));
    return { items, nextCursor: null };
  }

  @Delete('invitations/:id')
  @Endpoint({ summary: 'Take an invitation back.', allow: ['admin'], status: 204, answer: null })
  deleteInvitation(@CurrentActor() actor: Actor, @Param('id', { schema: schemas.idParameter }) id: string) {
    return this.ending.invitation(actor, id);
  }
}
