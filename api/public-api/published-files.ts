import { Injectable } from '@nestjs/common';
import { LRUCache } from 'lru-cache';
import { FileStore } from '../platform/file-store/file-store.js';
import { compressAs } from '../platform/http/headers/compress.js';
import type { Coding } from '../platform/http/headers/compress.js';
import { lost, PublishedReleases } from '../releases/published-releases.read-model.js';
import type { KnownRelease, PublishedFile } from '../releases/published-releases.read-model.js';
import { addressOf } from './address.js';
import { storedBytes } from './stored-bytes.js';
import type { StoredBytes } from './stored-bytes.js';

/** A published file that an address leads to. */
export interface FoundFile extends PublishedFile {
  readonly release: KnownRelease;
  readonly path: string;
  /** Whether a later release may put another file at the address. */
  readonly isMoved: boolean;
}

/** What is asked for again and again stays in memory, up to so much. */
const MOST_PLACES_KNOWN = 20_000;
const KEPT_BYTES = 128 * 1024 * 1024;

/** The bytes of what is published, by address. */
@Injectable()
export class PublishedFiles {
  private readonly found = new LRUCache<string, FoundFile>({ max: MOST_PLACES_KNOWN });
  /** How many reads were answered before the framework saw them. */
  readsAtTheDoor = 0;
  private foundIn: readonly KnownRelease[] = [];
  private readonly kept = new LRUCache<string, StoredBytes>({ maxSize: KEPT_BYTES, sizeCalculation: ({ bytes }) => bytes.length + 1 });

  constructor(
    private readonly published: PublishedReleases,
    private readonly files: FileStore,
  ) {}

  /**
   * The file at a path of the API; null when nothing published stands there.
   * @throws Problem when what is published is not known yet
   */
  at(path: string): FoundFile | null {
    if (this.foundIn !== this.published.all()) this.forgetPlaces();
    const known = this.found.get(path);
    if (known) return known;
    const file = this.look(path);
    // What is not there is not remembered: anybody can ask for endlessly many names.
    if (file) this.found.set(path, file);
    return file;
  }

  private forgetPlaces(): void {
    this.foundIn = this.published.all();
    this.found.clear();
  }

  private look(path: string): FoundFile | null {
    const address = addressOf(path);
    if (!address) return null;
    const { edition, revision, path: name } = address;
    const release = edition === null ? this.published.newest(name) : this.published.find(edition, revision ?? undefined);
    const file = release?.files.get(name);
    return release && file ? { ...file, release, path: name, isMoved: revision === null } : null;
  }

  /** Its bytes as they are in memory; undefined when they are not. */
  inMemory({ digest }: FoundFile, coding: Coding | null): StoredBytes | undefined {
    return this.kept.get(keyOf(digest, coding));
  }

  /**
   * Its bytes from the file store.
   * @throws Problem when the file is lost
   */
  async load(found: FoundFile, coding: Coding | null): Promise<StoredBytes> {
    const bytes = await this.fromStore(found, coding);
    this.kept.set(keyOf(found.digest, coding), bytes);
    return bytes;
  }

  private async fromStore({ release, path, digest, mediaType }: FoundFile, coding: Coding | null): Promise<StoredBytes> {
    if (coding !== null) {
      const compressed = await this.published.compressed(release, path, coding);
      if (compressed) return storedBytes(compressed, mediaType, digest, coding);
    }
    const bytes = await this.files.read(`${release.folder}/${path}`);
    if (!bytes) throw lost(release, path);
    // Compressed forms are made after the publication.
    return storedBytes(coding === null ? bytes : await compressAs(bytes, coding), mediaType, digest, coding);
  }
}

const keyOf = (digest: string, coding: Coding | null): string => (coding === null ? digest : digest + coding);
