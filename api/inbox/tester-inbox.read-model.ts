import { Injectable } from '@nestjs/common';
import { AssignmentsReadModel } from '../assignments/assignments.read-model.js';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import type { InboxItem } from '../contract/endpoints/inbox.js';
import { DecisionsReadModel } from '../decisions/decisions.read-model.js';
import { EditionRows } from '../editions/edition-rows.read-model.js';
import type { Actor } from '../platform/http/access.js';
import { RoundRobinsReadModel } from '../round-robins/round-robins.read-model.js';
import { SubmissionPointers } from '../submissions/submission-pointers.read-model.js';
import { WaitingSubmissions } from '../submissions/waiting-submissions.read-model.js';
import { waiting } from './inbox-words.js';

/** What waits for a tester. It is told from the tester's own work and the entries alone, never from what a spool is or what others did. */
@Injectable()
export class TesterInbox {
  constructor(
    private readonly assignments: AssignmentsReadModel,
    private readonly roundRobins: RoundRobinsReadModel,
    private readonly submissions: WaitingSubmissions,
    private readonly pointers: SubmissionPointers,
    private readonly decisions: DecisionsReadModel,
    private readonly editions: EditionRows,
    private readonly catalogue: CatalogueReadModel,
  ) {}

  async of({ accountId }: Actor): Promise<InboxItem[]> {
    const { returned, drafts } = await this.submissions.ofTester(accountId);
    const asked = await this.decisions.openQueriesOn(returned.map(({ id }) => id));
    const references = (isAsked: boolean) => returned.filter(({ id }) => asked.has(id) === isAsked).map(({ reference }) => reference);
    return [
      ...waiting('queries_open', references(true)),
      ...waiting('returned_to_you', references(false)),
      ...waiting('drafts', drafts),
      ...waiting('assignments_open', await this.asked(accountId)),
      ...waiting('spools_to_pull', await this.spools(accountId)),
      ...waiting('round_robin_cells', await this.roundRobins.waitingFor(accountId)),
    ];
  }

  private async asked(testerId: string): Promise<string[]> {
    const open = (await this.assignments.ofTester(testerId)).filter(({ handedIn }) => handedIn === null);
    return [...new Set(open.map(({ spool }) => spool))];
  }

  private async spools(testerId: string): Promise<string[]> {
    const entered = [...(await this.catalogue.variantsOfSpools(await this.editions.enteredNow())).keys()];
    const done = await this.pointers.handedInOn(entered, undefined, testerId);
    return [...(await this.catalogue.spoolCodes(entered.filter((id) => !done.has(id)))).values()].sort();
  }
}
