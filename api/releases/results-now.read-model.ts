import { Injectable } from '@nestjs/common';
import { spreadsBefore } from '../reckoning/rigs/season-spreads.js';
import { computeEdition } from '../reckoning/standings/compute-edition.js';
import type { ComputedResults } from '../reckoning/standings/compute-edition.js';
import { EarlierEditions } from './earlier-editions.read-model.js';
import { EditionEvidenceReadModel } from './edition-evidence.read-model.js';

/** Results of an edition as a release of this moment would have them: with what the editions before tell of rigs, testers and spools. */
@Injectable()
export class ResultsNow {
  constructor(
    private readonly evidence: EditionEvidenceReadModel,
    private readonly earlier: EarlierEditions,
  ) {}

  async of(slug: string): Promise<ComputedResults> {
    const evidence = await this.evidence.of(slug);
    return computeEdition(evidence, spreadsBefore(await this.earlier.from(evidence.edition.previous)));
  }
}
