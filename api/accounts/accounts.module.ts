/**
 * Purpose: who people are and what they may do. States: invited → account → disabled.
 * Admins invite and change accounts; everybody manages their own session and tokens.
 * A lost password is set anew at a one-time address that an admin makes; without an admin, the house's machine does.
 * Passwords argon2id; sessions and tokens are kept as digests; each try is counted and backs off.
 */
import { Module } from '@nestjs/common';
import { ActorFinder } from '../platform/http/access.js';
import { AcceptInvitation } from './accept-invitation.js';
import { AccountsController } from './accounts.controller.js';
import { AccountsReadModel } from './accounts.read-model.js';
import { AccountsStore } from './accounts.store.js';
import { AskForReset } from './ask-for-reset.js';
import { Attempts } from './attempts.js';
import { ChangeAccount } from './change-account.js';
import { ChangePassword } from './change-password.js';
import { CredentialsController } from './credentials.controller.js';
import { EndAccess } from './end-access.js';
import { ForgetExpired } from './forget-expired.js';
import { Invite } from './invite.js';
import { MakePasswordReset } from './make-password-reset.js';
import { MakeToken } from './make-token.js';
import { ResetPassword } from './reset-password.js';
import { SessionActorFinder } from './session-actor-finder.js';
import { SignIn } from './sign-in.js';

@Module({
  controllers: [AccountsController, CredentialsController],
  providers: [
    AcceptInvitation,
    AccountsReadModel,
    AccountsStore,
    AskForReset,
    Attempts,
    ChangeAccount,
    ChangePassword,
    EndAccess,
    ForgetExpired,
    Invite,
    MakePasswordReset,
    MakeToken,
    ResetPassword,
    SignIn,
    { provide: ActorFinder, useClass: SessionActorFinder },
  ],
  exports: [AccountsReadModel, ActorFinder, ForgetExpired, Invite, MakePasswordReset],
})
export class AccountsModule {}
