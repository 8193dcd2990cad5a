/** Orders to the worker. */
import type { OrderQueue } from '../platform/jobs/jobs.js';

/** Its key is the id of the release: one order a release. */
export const PUBLISH_RELEASE: OrderQueue = { name: 'release-publication', policy: 'exclusive' };
/** One waits beside one at work: what is published while the site is built is shown by the next build. */
export const BUILD_SITE: OrderQueue = { name: 'site-build', policy: 'short' };

export interface PublishReleaseOrder {
  readonly edition: string;
  readonly revision: number;
}
