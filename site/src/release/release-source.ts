/** Where the files are that the site is built from. */
export interface ReleaseSource {
  /**
   * Bytes of what stands at a path of the API, e.g. `/v1/releases`.
   * @returns null when there is nothing
   * @throws when the source cannot be read
   */
  readonly read: (path: string) => Promise<Uint8Array | null>;
}
