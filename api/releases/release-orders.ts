/** Orders to the worker. */
export const PUBLISH_RELEASE = 'publish-release';
export const BUILD_SITE = 'build-site';

export interface PublishReleaseOrder {
  readonly edition: string;
  readonly revision: number;
}
