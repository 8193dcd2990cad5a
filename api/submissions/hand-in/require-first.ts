import { Injectable } from '@nestjs/common';
import { isDuplicate } from '../../platform/database/database-failure.js';
import { Problem } from '../../platform/errors/problem.js';
import { EvidenceReadModel } from '../examine/evidence.read-model.js';
import { submissionProblems } from '../submissions.errors.js';

/** Tells by its name what was handed in by another request in the same moment; the record itself keeps the same content from standing twice. */
@Injectable()
export class RequireFirst {
  constructor(private readonly evidence: EvidenceReadModel) {}

  /** @param digests of the content that the work stores */
  async run<Answer>(digests: readonly string[], work: () => Promise<Answer>): Promise<Answer> {
    try {
      return await work();
    } catch (error) {
      if (!isDuplicate(error)) throw error;
      const standing = [...(await this.evidence.sameContent(digests)).values()].map(({ reference }) => reference);
      throw new Problem(submissionProblems['submissions/handed-in-before'], `It came in this moment as ${standing.sort().join(', ')}.`);
    }
  }
}
