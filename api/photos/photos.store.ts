import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';
import { uuid7 } from '../platform/identifiers/uuid7.js';

export interface NewPhoto {
  readonly submissionId: string | null;
  readonly spoolId: string | null;
  readonly specimen: number | null;
  readonly shows: string;
  readonly digest: string;
  readonly width: number;
  readonly height: number;
  readonly sizeBytes: number;
  readonly addedById: string;
  readonly addedAt: Date;
}

/** The only writer of photos. */
@Injectable()
export class PhotosStore {
  /** How many stand of a submission or a spool. */
  countOf(tx: Transaction, { submissionId, spoolId }: Pick<NewPhoto, 'submissionId' | 'spoolId'>): Promise<number> {
    return tx.photo.count({ where: { submissionId, spoolId, removedAt: null } });
  }

  async add(tx: Transaction, photo: NewPhoto): Promise<string> {
    const id = uuid7();
    await tx.photo.create({ data: { id, ...photo } });
    return id;
  }

  /** @returns whether the picture is of none that stands any more */
  async remove(tx: Transaction, { id, digest }: { id: string; digest: string }, removedAt: Date): Promise<boolean> {
    await tx.photo.update({ where: { id }, data: { removedAt } });
    return (await tx.photo.count({ where: { digest, removedAt: null } })) === 0;
  }
}
