import { Module } from '@nestjs/common';
import type { DynamicModule } from '@nestjs/common';
import { APP_FILTER, APP_GUARD, APP_INTERCEPTOR, APP_PIPE } from '@nestjs/core';
import { AccountsModule } from './accounts/accounts.module.js';
import { AuditModule } from './audit/audit.module.js';
import { CatalogueModule } from './catalogue/catalogue.module.js';
import { ControlPullsModule } from './control-pulls/control-pulls.module.js';
import { BoardModule } from './board/board.module.js';
import { FindingsModule } from './findings/findings.module.js';
import { EditionsModule } from './editions/editions.module.js';
import { InboxModule } from './inbox/inbox.module.js';
import { InterestsModule } from './interests/interests.module.js';
import { InstrumentsModule } from './instruments/instruments.module.js';
import { MethodsModule } from './methods/methods.module.js';
import { AccessGuard } from './platform/http/access.guard.js';
import { AnswerInterceptor } from './platform/http/answer.interceptor.js';
import { ContentInterceptor } from './platform/http/content.interceptor.js';
import { HealthModule } from './platform/http/health/health.module.js';
import { IdempotencyInterceptor } from './platform/http/idempotency/idempotency.interceptor.js';
import { MetricsModule } from './platform/http/health/metrics.module.js';
import { ProblemFilter } from './platform/http/problems/problem.filter.js';
import { validationPipe } from './platform/http/validation.js';
import { JobsModule } from './platform/jobs/jobs.module.js';
import { PlatformModule } from './platform/platform.module.js';
import type { PlatformOptions } from './platform/platform.module.js';
import { PhotosModule } from './photos/photos.module.js';
import { ProposalsModule } from './proposals/proposals.module.js';
import { PublicApiModule } from './public-api/public-api.module.js';
import { ReleasesModule } from './releases/releases.module.js';
import { AssignmentsModule } from './assignments/assignments.module.js';
import { RetestsModule } from './retests/retests.module.js';
import { ReviewsModule } from './reviews/reviews.module.js';
import { RoundRobinsModule } from './round-robins/round-robins.module.js';
import { StatementsModule } from './statements/statements.module.js';
import { SubmissionsModule } from './submissions/submissions.module.js';
import { WebhooksModule } from './webhooks/webhooks.module.js';

/** The features in the order of the work. */
const FEATURES = [
  AccountsModule,
  ProposalsModule,
  CatalogueModule,
  InterestsModule,
  InstrumentsModule,
  MethodsModule,
  EditionsModule,
  FindingsModule,
  ControlPullsModule,
  RoundRobinsModule,
  AssignmentsModule,
  SubmissionsModule,
  PhotosModule,
  ReviewsModule,
  RetestsModule,
  BoardModule,
  StatementsModule,
  ReleasesModule,
  PublicApiModule,
  WebhooksModule,
  InboxModule,
  AuditModule,
];

@Module({})
export class AppModule {
  static with(options: PlatformOptions): DynamicModule {
    return {
      module: AppModule,
      imports: [PlatformModule.with(options), ...FEATURES, JobsModule, MetricsModule, HealthModule],
      providers: [
        { provide: APP_GUARD, useClass: AccessGuard },
        { provide: APP_PIPE, useValue: validationPipe },
        { provide: APP_INTERCEPTOR, useClass: ContentInterceptor },
        { provide: APP_INTERCEPTOR, useClass: IdempotencyInterceptor },
        { provide: APP_INTERCEPTOR, useClass: AnswerInterceptor },
        { provide: APP_FILTER, useClass: ProblemFilter },
      ],
    };
  }
}
