import { Injectable } from '@nestjs/common';
import type { Resting } from '../contract/former.js';
import { among } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';

/** Which row of the catalogue, by its id. */
export type CatalogueRow =
  { readonly maker: string } | { readonly line: string } | { readonly variant: string } | { readonly spool: string };

/** Submissions that rest on a row of the catalogue: those that were handed in on a spool of it. */
@Injectable()
export class WhatRests {
  constructor(private readonly database: Database) {}

  async on(row: CatalogueRow, reader: Transaction = this.database.client): Promise<Resting> {
    const rows = await reader.submission.findMany({
      where: { revision: { gt: 0 }, spool: spoolOf(row) },
      select: { reference: true, editionId: true },
      orderBy: { reference: 'asc' },
    });
    const where = { id: among(rows.map(({ editionId }) => editionId)) };
    const editions = await reader.edition.findMany({ where, select: { slug: true }, orderBy: { slug: 'asc' } });
    return { submissions: rows.map(({ reference }) => reference), editions: editions.map(({ slug }) => slug) };
  }
}

function spoolOf(row: CatalogueRow): Prisma.SpoolWhereInput {
  if ('spool' in row) return { id: row.spool };
  if ('variant' in row) return { variantId: row.variant };
  return { variant: 'line' in row ? { lineId: row.line } : { line: { makerId: row.maker } } };
}
