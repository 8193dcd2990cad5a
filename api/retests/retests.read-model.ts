import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import { EditionRows } from '../editions/edition-rows.read-model.js';
import { Database } from '../platform/database/database.js';
import { RetestedSubmissions } from '../submissions/retested.read-model.js';
import { drawFrom } from './draw-order.js';

/** Draws and what was drawn, as editors and releases see them. */
@Injectable()
export class RetestsReadModel {
  constructor(
    private readonly database: Database,
    private readonly editions: EditionRows,
    private readonly catalogue: CatalogueReadModel,
    private readonly submissions: RetestedSubmissions,
  ) {}

  /** The draw of an edition, in its order; null before there is one. */
  async ofEdition(slug: string) {
    const editionId = await this.editions.idOf(slug);
    const draw = editionId && (await this.database.client.retestDraw.findFirst({ where: { editionId } }));
    if (!draw) return null;
    const spools = await this.catalogue.putBack({ drawId: draw.id });
    const originals = await this.submissions.named(spools.map(({ submissionId }) => submissionId));
    const accepted = await this.submissions.acceptedOn(spools.map(({ spoolId }) => spoolId));
    const order = drawFrom(draw.from, draw.seed, Number(draw.percent));
    return {
      seed: draw.seed,
      percent: draw.percent.toFixed(),
      from: draw.from,
      drawnOn: draw.at.toISOString().slice(0, 10),
      drawn: spools
        .map(({ spoolId, code, submissionId }) => {
          const { reference, method } = originals.of(submissionId);
          return { original: reference, method, spool: code, again: accepted.get(spoolId) ?? null };
        })
        .sort((one, other) => order.indexOf(one.original) - order.indexOf(other.original)),
    };
  }
}
