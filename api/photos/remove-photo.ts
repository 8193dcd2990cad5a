import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import { FileStore } from '../platform/file-store/file-store.js';
import type { Actor } from '../platform/http/access.js';
import { SubmissionsStore } from '../submissions/submissions.store.js';
import { noPhoto, pathOf } from './photo.js';
import { photoProblems } from './photos.errors.js';
import { mayRemove, PhotosReadModel } from './photos.read-model.js';
import { PhotosStore } from './photos.store.js';

/** Takes a picture away, from the disk too; that it was there stays on record. */
@Injectable()
export class RemovePhoto {
  constructor(
    private readonly database: Database,
    private readonly photos: PhotosReadModel,
    private readonly store: PhotosStore,
    private readonly submissions: SubmissionsStore,
    private readonly files: FileStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, id: string): Promise<void> {
    const photo = await this.photos.open(actor, id);
    if (!photo) throw noPhoto(id);
    const isLast = await this.database.transaction(async (tx) => {
      const submission = photo.reference === null ? null : await this.submissions.lock(tx, photo.reference);
      if (!mayRemove(actor, { ...photo, state: submission?.state ?? null })) throw new Problem(photoProblems['photos/decided']);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'photo.removed',
        ...(photo.reference === null
          ? { objectType: 'spool', objectId: photo.code }
          : { objectType: 'submission', objectId: photo.reference }),
        before: { photo: id, digest: photo.digest },
      });
      return this.store.remove(tx, photo, this.clock.now());
    });
    if (isLast) await this.files.remove(pathOf(photo.digest));
  }
}
