import { Injectable } from '@nestjs/common';
import type { Photo, PhotoShows } from '../contract/endpoints/photos.js';
import { KeyReadings } from '../platform/audit/key-readings.store.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
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
  ) {}

  async ofSubmission(actor: Actor, reference: string): Promise<Photo[]> {
    return (await this.find({ reference })).map((row) => toPhoto(actor, row));
  }

  async ofSpool(actor: Actor, code: string): Promise<Photo[]> {
    return (await this.find({ code })).map((row) => toPhoto(actor, row));
  }

  /** One that the actor may see, noted where it shows a label; null where there is none. */
  async open(actor: Actor, id: string): Promise<PlacedPhoto | null> {
    const [photo] = await this.find({ id });
    if (!photo || !mayOpen(actor, photo)) return null;
    if (photo.shows === 'label') await this.keyReadings.note(actor, 'label', { codes: [photo.code] });
    return photo;
  }

  private find({ id = null, reference = null, code = null }: { id?: string | null; reference?: string | null; code?: string | null }) {
    return this.database.client.$queryRaw<PlacedPhoto[]>`
      SELECT f."id"::text, f."submission_id"::text AS "submissionId", f."spool_id"::text AS "spoolId", s."reference", s."state",
        s."tester_id"::text AS "testerId", p."blind_code" AS "code", f."specimen", f."shows", f."digest", f."width", f."height",
        f."size_bytes" AS "sizeBytes", f."added_by_id"::text AS "addedById", f."added_at" AS "addedAt"
      FROM "photo" f LEFT JOIN "submission" s ON s."id" = f."submission_id" JOIN "spool" p ON p."id" = coalesce(f."spool_id", s."spool_id")
      WHERE f."removed_at" IS NULL
        AND (f."id" = ${id}::uuid OR s."reference" = ${reference} OR (f."spool_id" IS NOT NULL AND p."blind_code" = ${code}))
      ORDER BY f."added_at", f."id"`;
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
