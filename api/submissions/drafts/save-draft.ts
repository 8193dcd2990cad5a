import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import { platformProblems } from '../../platform/errors/platform.errors.js';
import { Problem } from '../../platform/errors/problem.js';
import type { Actor } from '../../platform/http/access.js';
import { notValid } from '../../platform/http/validation.js';
import { FindSubjects } from '../examine/find-subjects.js';
import { isFound, subjectChanges, unknownNames } from '../examine/subject.js';
import type { Subject } from '../examine/subject.js';
import { referenceOf, requireOwn } from '../submission.js';
import { submissionProblems } from '../submissions.errors.js';
import type { BegunDraft, DraftContent } from '../../contract/endpoints/drafts.js';
import { CompleteDraft } from './complete-draft.js';
import { differencesOf } from './draft-differences.js';
import type { LockedSubmission } from '../submission.js';
import { EditionsStore } from '../../editions/editions.store.js';
import { SubmissionsStore } from '../submissions.store.js';

/** Drafts that one person may have begun in an edition: more than the spools of a bench. */
const MOST_DRAFTS = 200;

/** Keeps a draft as typed: it names edition, spool, method version and bench day, and may lack everything else. */
@Injectable()
export class SaveDraft {
  constructor(
    private readonly complete: CompleteDraft,
    private readonly findSubjects: FindSubjects,
    private readonly store: SubmissionsStore,
    private readonly editions: EditionsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  /** Begins a draft. @returns its reference */
  async begin(actor: Actor, begun: BegunDraft): Promise<string> {
    const draft = await this.complete.run(begun);
    const subject = await this.subjectOf(draft);
    const { id, slug } = subject.edition;
    return this.database.transaction(async (tx) => {
      const number = await this.editions.takeNumbers(tx, id, 1);
      if (number === null) throw new Problem(submissionProblems['submissions/edition-closed'], `Edition ${slug} is not open any more.`);
      // The edition is locked since it gave the number: nobody passes the limit by many requests at once.
      if ((await this.store.countDrafts(tx, id, actor.accountId)) >= MOST_DRAFTS)
        throw new Problem(submissionProblems['submissions/too-many-drafts'], `You have ${MOST_DRAFTS} drafts in edition ${slug}.`);
      const reference = referenceOf(slug, number);
      const row = { reference, testerId: actor.accountId, createdAt: this.clock.now() };
      await this.store.createDraft(tx, row, subject, draft);
      await this.audit.record(tx, { actorId: actor.accountId, action: 'draft.begun', objectType: 'submission', objectId: reference });
      return reference;
    });
  }

  /** Saves what was typed since; one's own draft, as last seen. */
  async run(actor: Actor, reference: string, version: number, draft: DraftContent): Promise<void> {
    const subject = await this.subjectOf(draft);
    await this.database.transaction(async (tx) => {
      const before = requireOwn(actor, await this.store.lock(tx, reference), reference, 'save');
      if (before.version !== version) throw movedOn(before, version, draft);
      const changes = subjectChanges(before, subject);
      if (changes.length > 0) throw notValid(changes);
      await this.store.saveDraft(tx, before, subject, draft, this.clock.now());
      await this.audit.record(tx, { actorId: actor.accountId, action: 'draft.saved', objectType: 'submission', objectId: reference });
    });
  }

  private async subjectOf(draft: DraftContent): Promise<Subject> {
    const [sought] = await this.findSubjects.run([draft]);
    if (!sought || !isFound(sought)) throw notValid(sought ? unknownNames(draft, sought) : []);
    const faults = unknownNames(draft, sought);
    if (faults.length > 0) throw notValid(faults);
    return sought;
  }
}

/** Another tab saved meanwhile: what it saved comes back with the refusal, and where it differs, so that nobody's work is lost. */
function movedOn({ version, draft }: LockedSubmission & { readonly draft: unknown }, seen: number, typed: DraftContent): Problem {
  const detail = `The draft is at version "${version}" now; your change was made on "${seen}". Its content is in "current"; what differs from yours is in "differs". Merge them and save on version "${version}".`;
  const differs = differencesOf(draft, JSON.parse(JSON.stringify(typed)) as unknown);
  return new Problem(
    platformProblems['request/if-match-stale'],
    detail,
    [],
    { ETag: `"${version}"` },
    { current: { version, content: draft }, differs },
  );
}
