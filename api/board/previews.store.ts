import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';
import type { PreviewCells } from './preview.js';

/** The only writer of what editors have looked at. */
@Injectable()
export class PreviewsStore {
  /** Keeps what an editor has looked at in place of the look before, and gives that one. */
  async keep(tx: Transaction, slug: string, look: { byId: string; at: Date; cells: PreviewCells }) {
    const { id } = await tx.edition.findUniqueOrThrow({ where: { slug }, select: { id: true } });
    const key = { editionId: id, byId: look.byId };
    const last = await tx.editionPreview.findUnique({ where: { editionId_byId: key } });
    await tx.editionPreview.upsert({
      where: { editionId_byId: key },
      create: { ...key, at: look.at, cells: look.cells },
      update: { at: look.at, cells: look.cells },
    });
    return last && { at: last.at, cells: last.cells as PreviewCells };
  }
}
