/**
 * Inbox: what waits for whom, by role, from what the other features have on record. States: none; nothing is written here.
 * Anybody signed in reads their own.
 */
import { Controller, Get, Module } from '@nestjs/common';
import { AccountsModule } from '../accounts/accounts.module.js';
import { AssignmentsModule } from '../assignments/assignments.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { inboxResponse } from '../contract/endpoints/inbox.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { DecisionsModule } from '../decisions/decisions.module.js';
import { EditionsModule } from '../editions/editions.module.js';
import { InstrumentsModule } from '../instruments/instruments.module.js';
import { InterestsModule } from '../interests/interests.module.js';
import { ReleasesModule } from '../releases/releases.module.js';
import { SubmissionsModule } from '../submissions/submissions.module.js';
import { ProposalsModule } from '../proposals/proposals.module.js';
import { RoundRobinsModule } from '../round-robins/round-robins.module.js';
import { WebhooksModule } from '../webhooks/webhooks.module.js';
import { AdminInbox } from './admin-inbox.read-model.js';
import { CorrectionsDue } from './corrections-due.read-model.js';
import { EditorInbox } from './editor-inbox.read-model.js';
import { ReviewerInbox } from './reviewer-inbox.read-model.js';
import { TesterInbox } from './tester-inbox.read-model.js';

@Controller('v1/inbox')
class InboxController {
  constructor(
    private readonly tester: TesterInbox,
    private readonly reviewer: ReviewerInbox,
    private readonly editor: EditorInbox,
    private readonly admin: AdminInbox,
  ) {}

  @Get()
  @Endpoint({ summary: 'What waits for you, by the roles that you hold.', allow: 'signedIn', answer: inboxResponse })
  async getInbox(@CurrentActor() actor: Actor) {
    const items = [
      ...(actor.roles.includes('tester') ? await this.tester.of(actor) : []),
      ...(actor.roles.includes('reviewer') ? await this.reviewer.of(actor) : []),
      ...(actor.roles.includes('editor') ? await this.editor.of(actor) : []),
      ...(actor.roles.includes('admin') ? await this.admin.all() : []),
    ];
    return { items, nextCursor: null };
  }
}

@Module({
  imports: [
    AccountsModule,
    AssignmentsModule,
    CatalogueModule,
    DecisionsModule,
    EditionsModule,
    InstrumentsModule,
    InterestsModule,
    ProposalsModule,
    ReleasesModule,
    RoundRobinsModule,
    SubmissionsModule,
    WebhooksModule,
  ],
  controllers: [InboxController],
  providers: [AdminInbox, CorrectionsDue, EditorInbox, ReviewerInbox, TesterInbox],
})
export class InboxModule {}
