/**
 * Purpose: who people are and what they may do. States: invited → account → disabled.
 * Admins invite and change accounts; everybody manages their own session, tokens and declared interests.
 * Passwords argon2id; sessions and tokens are kept as digests; failed sign-ins back off.
 */
import { Module } from '@nestjs/common';
import { ActorFinder } from '../platform/http/access.js';
import { AcceptInvitation } from './accept-invitation.js';
import { AccountsController } from './accounts.controller.js';
import { AccountsReadModel } from './accounts.read-model.js';
import { AccountsStore } from './accounts.store.js';
import { Attempts } from './attempts.js';
import { ChangeAccount } from './change-account.js';
import { DeclareInterest } from './declare-interest.js';
import { Invite } from './invite.js';
import { MakeToken } from './make-token.js';
import { SessionActorFinder } from './session-actor-finder.js';
import { SignIn } from './sign-in.js';

@Module({
  controllers: [AccountsController],
  providers: [
    AcceptInvitation,
    AccountsReadModel,
    AccountsStore,
    Attempts,
    ChangeAccount,
    DeclareInterest,
    Invite,
    MakeToken,
    SignIn,
    { provide: ActorFinder, useClass: SessionActorFinder },
  ],
  exports: [AccountsReadModel, ActorFinder, Invite],
})
export class AccountsModule {}
