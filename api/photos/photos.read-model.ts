import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import { SpoolRows } from '../catalogue/spools/spool-rows.read-model.js';
import type { Photo, PhotoShows } from '../contract/endpoints/photos.js';
import { KeyReadings } from '../audit/key-readings.store.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import type { Prisma } from '../platform/database/generated/client.js';
import { SubmissionPointers } from '../submissions/submission-pointers.read-model.js';
import { SubmissionsReadModel } from '../submissions/submissions.read-model.js';
import { isUndecided } from './photo.js';

/** A photo with what decides who sees it and who takes it away. */
export interface PlacedPhoto {
  readonly id: string;
  readonly submissionId: string | null;
  readonly spoolId: string | null;
  readonly reference: string | null;
  readonly state: string | null;
  readonly testerId: string | null;
  readonly code: string;
  readonly specimen: number | null;
  readonly shows: string;
  readonly digest: string;
  readonly width: number;
  readonly height: number;
  readonly sizeBytes: number;
  readonly addedById: string;
  readonly addedAt: Date;
}

/** Photos that stand. */
@Injectable()
export class PhotosReadModel {
  constructor(
    private readonly database: Database,
    private readonly keyReadings: KeyReadings,
    private readonly submissions: SubmissionsReadModel,
    private readonly pointers: SubmissionPointers,
    private readonly catalogue: CatalogueReadModel,
    private readonly spools: SpoolRows,
  ) {}

  async ofSubmission(actor: Actor, reference: string): Promise<Photo[]> {
    const submissionId = await this.pointers.idOf(reference);
    return submissionId === null ? [] : (await this.find({ submissionId })).map((row) => toPhoto(actor, row));
  }

  async ofSpool(actor: Actor, code: string): Promise<Photo[]> {
    const spoolId = (await this.spools.ids([code])).get(code);
    return spoolId === undefined ? [] : (await this.find({ spoolId })).map((row) => toPhoto(actor, row));
  }

  /** One that the actor may see, noted where it shows a label; null where there is none. */
  async open(actor: Actor, id: string): Promise<PlacedPhoto | null> {
    const [photo] = await this.find({ id });
    if (!photo || !mayOpen(actor, photo)) return null;
    if (photo.shows === 'label') await this.keyReadings.note(actor, 'label', { codes: [photo.code] });
    return photo;
  }

  private async find(which: Prisma.PhotoWhereInput): Promise<PlacedPhoto[]> {
    const rows = await this.database.client.photo.findMany({
      where: { ...which, removedAt: null },
      orderBy: [{ addedAt: 'asc' }, { id: 'asc' }],
    });
    const submissions = await this.submissions.known(rows.flatMap(({ submissionId }) => submissionId ?? []));
    const placed = rows.map((row) => ({ row, of: row.submissionId === null ? null : submissions.of(row.submissionId) }));
    const spoolOf = ({ row, of }: (typeof placed)[number]) => row.spoolId ?? of?.spoolId ?? '';
    const codes = await this.catalogue.spoolCodes(placed.map(spoolOf));
    return placed.map((one) => ({
      ...one.row,
      reference: one.of?.reference ?? null,
      state: one.of?.state ?? null,
      testerId: one.of?.testerId ?? null,
      code: codes.of(spoolOf(one)),
    }));
  }
}

/** The own ones; what was handed in and what is of a spool for reviewers and editors. */
const mayOpen = (actor: Actor, { testerId, state }: PlacedPhoto): boolean =>
  testerId === actor.accountId || (state !== 'draft' && actor.roles.some((role) => role === 'reviewer' || role === 'editor'));

/** Its tester until it is decided, an editor always: what shows a face must go. */
export const mayRemove = (actor: Actor, { addedById, state }: Pick<PlacedPhoto, 'addedById' | 'state'>): boolean =>
  actor.roles.includes('editor') || (addedById === actor.accountId && state !== null && isUndecided(state));

const toPhoto = (actor: Actor, photo: PlacedPhoto): Photo => ({
  id: photo.id,
  shows: photo.shows as PhotoShows,
  specimen: photo.specimen,
  digest: photo.digest,
  width: photo.width,
  height: photo.height,
  sizeBytes: photo.sizeBytes,
  addedAt: photo.addedAt.toISOString(),
  isRemovable: mayRemove(actor, photo),
});
