/**
 * Submissions: what one tester hands in of one spool by one method version on one bench day.
 * States: draft → submitted → accepted | returned (→ submitted again) | refused; accepted → withdrawn (decisions: see reviews);
 * submitted, before a reviewer looks at it, or returned → takenBack by its tester.
 * Testers write and read their own, blind: no maker, line, claim or ratio. Reviewers and editors read all but drafts.
 * What was handed in is never changed; a later revision stands beside it. Only a draft is deleted.
 * Who has read the key of a spool hands it in all the same: it is marked not blind. Previews of a spool are counted.
 * Preview and hand-in share one examination: unit parse, figures, checks.
 */
import { Module } from '@nestjs/common';
import { AccountsModule } from '../accounts/accounts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { InterestsModule } from '../interests/interests.module.js';
import { ControlPullsModule } from '../control-pulls/control-pulls.module.js';
import { EditionsModule } from '../editions/editions.module.js';
import { DecisionsModule } from '../decisions/decisions.module.js';
import { FindingsModule } from '../findings/findings.module.js';
import { InstrumentsModule } from '../instruments/instruments.module.js';
import { MethodsModule } from '../methods/methods.module.js';
import { DeleteDraft } from './drafts/delete-draft.js';
import { DraftsController } from './drafts/drafts.controller.js';
import { EvidenceReadModel } from './examine/evidence.read-model.js';
import { ExamineSubmissions } from './examine/examine-submissions.js';
import { GatherBeside } from './examine/gather-beside.js';
import { FindSubjects } from './examine/find-subjects.js';
import { HandInRevision } from './hand-in/hand-in-revision.js';
import { HandInSubmissions } from './hand-in/hand-in-submissions.js';
import { SpoolPreviewsStore } from './hand-in/spool-previews.store.js';
import { PreviewSubmissions } from './hand-in/preview-submissions.js';
import { RequireFirst } from './hand-in/require-first.js';
import { RequireRigsAsSeen } from './hand-in/require-rigs-as-seen.js';
import { CompleteDraft } from './drafts/complete-draft.js';
import { SaveDraft } from './drafts/save-draft.js';
import { TakeBackSubmission } from './hand-in/take-back-submission.js';
import { RetestedSubmissions } from './retested.read-model.js';
import { BesideSubmissions } from './views/beside-submissions.read-model.js';
import { ResultsBeside } from './views/results-beside.read-model.js';
import { RevisionParts } from './views/revision-parts.read-model.js';
import { SubmissionNames } from './views/submission-names.read-model.js';
import { SubmissionViewsReadModel } from './views/submission-views.read-model.js';
import { SubmissionPointers } from './submission-pointers.read-model.js';
import { WaitingSubmissions } from './waiting-submissions.read-model.js';
import { SubmissionsController } from './submissions.controller.js';
import { SubmissionsReadModel } from './submissions.read-model.js';
import { SubmissionsStore } from './submissions.store.js';
import { AddTraces } from './traces/add-traces.js';
import { TracesController } from './traces/traces.controller.js';
import { TracesReadModel } from './traces/traces.read-model.js';
import { TracesStore } from './traces/traces.store.js';

@Module({
  imports: [
    AccountsModule,
    CatalogueModule,
    ControlPullsModule,
    DecisionsModule,
    EditionsModule,
    FindingsModule,
    InstrumentsModule,
    InterestsModule,
    MethodsModule,
  ],
  controllers: [SubmissionsController, DraftsController, TracesController],
  providers: [
    FindSubjects,
    EvidenceReadModel,
    ExamineSubmissions,
    GatherBeside,
    HandInSubmissions,
    HandInRevision,
    RequireFirst,
    RequireRigsAsSeen,
    TakeBackSubmission,
    PreviewSubmissions,
    SpoolPreviewsStore,
    CompleteDraft,
    SaveDraft,
    DeleteDraft,
    SubmissionsStore,
    RetestedSubmissions,
    SubmissionsReadModel,
    BesideSubmissions,
    ResultsBeside,
    RevisionParts,
    SubmissionNames,
    SubmissionViewsReadModel,
    SubmissionPointers,
    WaitingSubmissions,
    AddTraces,
    TracesStore,
    TracesReadModel,
  ],
  exports: [
    ResultsBeside,
    RetestedSubmissions,
    SubmissionPointers,
    SubmissionsReadModel,
    SubmissionsStore,
    SubmissionViewsReadModel,
    WaitingSubmissions,
  ],
})
export class SubmissionsModule {}
