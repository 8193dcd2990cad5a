import { Injectable } from '@nestjs/common';
import { SpoolsStore } from '../catalogue/spools/spools.store.js';
import { normaliseBlindCode } from '../contract/blind-code.js';
import { MOST_PHOTOS } from '../contract/endpoints/photos.js';
import type { PhotoShows } from '../contract/endpoints/photos.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { KeyReadings } from '../audit/key-readings.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { FileStore } from '../platform/file-store/file-store.js';
import type { Actor } from '../platform/http/access.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import { SubmissionsStore } from '../submissions/submissions.store.js';
import { cleanPicture } from './clean-picture.js';
import { isUndecided, pathOf } from './photo.js';
import { photoProblems } from './photos.errors.js';
import { PhotosStore } from './photos.store.js';
import type { NewPhoto } from './photos.store.js';

/** Of what a picture is. */
export type PhotoSubject = { readonly reference: string } | { readonly code: string };

export interface PhotoToAdd {
  readonly bytes: Buffer;
  readonly shows: PhotoShows;
  readonly specimen?: number | undefined;
}

/** Keeps a picture of an own submission that is not decided, or of a spool. */
@Injectable()
export class AddPhoto {
  constructor(
    private readonly database: Database,
    private readonly store: PhotosStore,
    private readonly submissions: SubmissionsStore,
    private readonly spools: SpoolsStore,
    private readonly files: FileStore,
    private readonly keyReadings: KeyReadings,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, subject: PhotoSubject, { bytes, shows, specimen }: PhotoToAdd): Promise<void> {
    const picture = await cleanPicture(bytes);
    const digest = sha256(picture.bytes);
    const kept = { specimen: specimen ?? null, shows, digest, width: picture.width, height: picture.height };
    await this.database.transaction(async (tx) => {
      const place = await this.placeOf(tx, actor, subject);
      if ((await this.store.countOf(tx, place)) >= MOST_PHOTOS) throw new Problem(photoProblems['photos/too-many']);
      await this.files.write(pathOf(digest), picture.bytes);
      const id = await this.store.add(tx, {
        ...place,
        ...kept,
        sizeBytes: picture.bytes.byteLength,
        addedById: actor.accountId,
        addedAt: this.clock.now(),
      });
      const told = 'code' in subject ? { codes: [normaliseBlindCode(subject.code)] } : { references: [subject.reference] };
      if (shows === 'label') await this.keyReadings.note(actor, 'label', told, tx);
      await this.audit.record(tx, { actorId: actor.accountId, action: 'photo.added', ...objectOf(subject), after: { photo: id, ...kept } });
    });
  }

  private async placeOf(tx: Transaction, actor: Actor, subject: PhotoSubject): Promise<Pick<NewPhoto, 'submissionId' | 'spoolId'>> {
    if ('code' in subject) {
      const { id: spoolId } = await this.spools.lock(tx, subject.code);
      return { submissionId: null, spoolId };
    }
    const { reference } = subject;
    const submission = await this.submissions.lock(tx, reference);
    if (submission?.testerId !== actor.accountId)
      throw new Problem(platformProblems['request/not-found'], `No submission of yours has the reference ${reference}.`);
    if (!isUndecided(submission.state)) throw new Problem(photoProblems['photos/decided'], `${reference} is ${submission.state}.`);
    return { submissionId: submission.id, spoolId: null };
  }
}

const objectOf = (subject: PhotoSubject) =>
  'code' in subject
    ? { objectType: 'spool', objectId: normaliseBlindCode(subject.code) }
    : { objectType: 'submission', objectId: subject.reference };
