/**
 * Purpose: immutable publications of an edition. States: building → published → superseded.
 * Editors order a release; the worker builds its files, seals them by a manifest, publishes in one transaction and rebuilds the site.
 * What an editor looked at before is kept, so that the next look tells what changed.
 * Nothing published is ever changed or deleted; a later revision carries an erratum.
 */
import { Module } from '@nestjs/common';
import { AuditModule } from '../audit/audit.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { ControlPullsModule } from '../control-pulls/control-pulls.module.js';
import { EditionsModule } from '../editions/editions.module.js';
import { InstrumentsModule } from '../instruments/instruments.module.js';
import { MethodsModule } from '../methods/methods.module.js';
import { RetestsModule } from '../retests/retests.module.js';
import { RoundRobinsModule } from '../round-robins/round-robins.module.js';
import { StatementsModule } from '../statements/statements.module.js';
import { SubmissionsModule } from '../submissions/submissions.module.js';
import { BuildRelease } from './publication/build-release.js';
import { BuildSite } from './site/build-site.js';
import { CallOffRelease } from './publication/call-off-release.js';
import { CopyOut } from './site/copy-out.js';
import { ChangesReadModel } from './changes.read-model.js';
import { EarlierEditions } from './earlier-editions.read-model.js';
import { EditionEvidenceReadModel } from './edition-evidence.read-model.js';
import { GatherRelease } from './publication/gather-release.js';
import { PreviewEdition } from './previews/preview-edition.js';
import { PreviewExclusion } from './previews/preview-exclusion.js';
import { PreviewsController } from './previews/previews.controller.js';
import { EditionPreviewsStore } from './previews/edition-previews.store.js';
import { PublishRelease } from './publication/publish-release.js';
import { PublishedReleases } from './published-releases.read-model.js';
import { RebuildFiles } from './publication/rebuild-files.js';
import { CompressRelease } from './publication/compress-release.js';
import { ReleaseWork } from './publication/release-work.js';
import { ReleaseRows } from './release-rows.read-model.js';
import { ReleasesController } from './releases.controller.js';
import { ReleasesReadModel } from './releases.read-model.js';
import { ReleasesStore } from './releases.store.js';
import { ReplaceSigningKey } from './signing/replace-signing-key.js';
import { RequestRelease } from './publication/request-release.js';
import { ResultsNow } from './results-now.read-model.js';
import { RunStandingChecks } from './standing-checks/run-standing-checks.js';
import { SigningKey } from './signing/signing-key.js';
import { SiteSource } from './site/site-source.js';
import { SupersededReadModel } from './superseded.read-model.js';
import { SweepReleaseFolders } from './publication/sweep-release-folders.js';

@Module({
  imports: [
    AuditModule,
    CatalogueModule,
    ControlPullsModule,
    EditionsModule,
    InstrumentsModule,
    MethodsModule,
    RetestsModule,
    RoundRobinsModule,
    StatementsModule,
    SubmissionsModule,
  ],
  controllers: [PreviewsController, ReleasesController],
  providers: [
    BuildRelease,
    BuildSite,
    CallOffRelease,
    CompressRelease,
    ChangesReadModel,
    CopyOut,
    EarlierEditions,
    EditionEvidenceReadModel,
    GatherRelease,
    PreviewEdition,
    PreviewExclusion,
    EditionPreviewsStore,
    PublishRelease,
    PublishedReleases,
    RebuildFiles,
    ReleaseRows,
    ReleaseWork,
    ReleasesReadModel,
    ReleasesStore,
    ReplaceSigningKey,
    RequestRelease,
    ResultsNow,
    RunStandingChecks,
    SigningKey,
    SiteSource,
    SupersededReadModel,
    SweepReleaseFolders,
  ],
  exports: [ChangesReadModel, PublishedReleases, ReleaseRows, ReleasesReadModel, ReleaseWork, ResultsNow],
})
export class ReleasesModule {}
