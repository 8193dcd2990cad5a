import { Injectable } from '@nestjs/common';
import { DecisionsReadModel } from '../decisions/decisions.read-model.js';
import { KeyReadings } from '../audit/key-readings.store.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { SubmissionsReadModel } from '../submissions/submissions.read-model.js';
import { ResultsBeside } from '../submissions/views/results-beside.read-model.js';
import { reviewProblems } from './reviews.errors.js';

/** What others found of the same variant by the same method; hidden from a reviewer until the first judgement is given. */
@Injectable()
export class EarlierResultsReadModel {
  constructor(
    private readonly submissions: SubmissionsReadModel,
    private readonly decisions: DecisionsReadModel,
    private readonly results: ResultsBeside,
    private readonly keyReadings: KeyReadings,
  ) {}

  /** @throws Problem 403 before the actor's own judgement of the standing revision */
  async of(actor: Actor, reference: string) {
    const submission = await this.submissions.standing(reference);
    if (!submission) throw new Problem(platformProblems['request/not-found'], `No submission has the reference ${reference}.`);
    if (!(await this.decisions.hasJudged(submission.revisionId, actor.accountId))) throw new Problem(reviewProblems['reviews/judge-first']);
    const earlier = await this.results.beside(submission);
    await this.keyReadings.note(actor, 'results', { references: [reference, ...earlier.map((result) => result.reference)] });
    return earlier;
  }
}
