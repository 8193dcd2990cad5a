/** Orders to the worker. */
import type { OrderQueue } from '../../platform/jobs/jobs.js';

/** Its key is the id of the release: one order a release. */
export const PUBLISH_RELEASE: OrderQueue = { name: 'release-publication', policy: 'exclusive' };
/** Builds what waits for its time; a queue of its own, so that nothing that is due waits behind it longer than one build. */
export const PREPARE_RELEASE: OrderQueue = { name: 'release-preparation', policy: 'exclusive' };
/** One waits beside one at work: what is published while the site is built is shown by the next build. */
export const BUILD_SITE: OrderQueue = { name: 'site-build', policy: 'short' };

/** Its key is the digest of the release. */
export const COMPRESS_RELEASE: OrderQueue = { name: 'release-compression', policy: 'exclusive' };
/** Pages come first. */
export const COMPRESSED_AFTER_S = 20;

export interface PublishReleaseOrder {
  readonly edition: string;
  readonly revision: number;
}

/** Taken up so long before its time, so that reading what it is built from is over by then. */
const AHEAD_S = 30;
/** What changed after it was asked for is built so long before its time. */
const LOOKED_THROUGH_S = 600;

interface PlacedOrder {
  readonly queue: OrderQueue;
  readonly key: string;
  readonly afterS: number;
}

/** A release that does not wait is published at once; one that waits is built when it is asked for, and again before its time if anything changed. */
export function ordersFor(id: string, publishAt: Date | null, now: Date): PlacedOrder[] {
  const leftS = publishAt === null ? 0 : (publishAt.getTime() - now.getTime()) / 1000;
  const publication = { queue: PUBLISH_RELEASE, key: id, afterS: wholeSeconds(leftS - AHEAD_S) };
  if (publication.afterS === 0) return [publication];
  const preparations = [
    { queue: PREPARE_RELEASE, key: id, afterS: 0 },
    { queue: PREPARE_RELEASE, key: againOf(id), afterS: wholeSeconds(leftS - LOOKED_THROUGH_S) },
  ];
  return [publication, ...preparations.filter(({ key, afterS }) => key === id || afterS > 0)];
}

/** Under which keys orders of a release may wait. */
export const keysOf = (id: string): Pick<PlacedOrder, 'queue' | 'key'>[] => [
  { queue: PUBLISH_RELEASE, key: id },
  { queue: PREPARE_RELEASE, key: id },
  { queue: PREPARE_RELEASE, key: againOf(id) },
];

const againOf = (id: string): string => `${id} again`;
const wholeSeconds = (seconds: number): number => Math.max(0, Math.floor(seconds));
