import { Injectable } from '@nestjs/common';
import type { Transaction } from '../../platform/database/database.js';
import type { RevisionCells } from '../../reckoning/release-inputs.js';

/** The only writer of what editors have looked at. */
@Injectable()
export class EditionPreviewsStore {
  /** Keeps what an editor has looked at in place of the look before, and gives that one. */
  async keep(tx: Transaction, editionId: string, look: { byId: string; at: Date; shown: RevisionCells }) {
    const key = { editionId, byId: look.byId };
    const last = await tx.editionPreview.findUnique({ where: { editionId_byId: key } });
    await tx.editionPreview.upsert({
      where: { editionId_byId: key },
      create: { ...key, at: look.at, cells: toJson(look.shown) },
      update: { at: look.at, cells: toJson(look.shown) },
    });
    return last && { at: last.at, shown: toShown(last.cells) };
  }
}

const toJson = ({ cells, top, kinds = [], divisions }: RevisionCells) => ({
  cells: { ...cells },
  top: [...top],
  kinds: [...kinds],
  ...(divisions && { divisions: divisions.map((one) => ({ ...one, variants: [...one.variants] })) }),
});

/** The first looks kept places, scores and values alone, as where → text. */
const toShown = (kept: unknown): RevisionCells => {
  const { cells, ...shown } = kept as { cells?: RevisionCells['cells']; top: string[]; kinds: string[] };
  return cells ? { cells, ...shown } : { cells: kept as RevisionCells['cells'], top: [] };
};
