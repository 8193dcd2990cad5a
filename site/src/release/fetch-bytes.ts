import { folderSource } from './folder-source.js';
import { httpSource } from './http-source.js';
import type { ReleaseSource } from './release-source.js';

/**
 * Fetches what stands at a path of the API as bytes: from the folder RELEASES_FOLDER, else from the API at API_URL.
 * @param path Path that begins with `/`, e.g. `/v1/releases`
 * @returns The bytes, or null when there is nothing at the path
 * @throws When neither is set, or the source cannot be read
 */
export async function fetchBytes(path: string): Promise<Uint8Array | null> {
  return source().read(path);
}

function source(): ReleaseSource {
  const { RELEASES_FOLDER: folder, API_URL: api } = process.env;
  if (folder) return folderSource(folder);
  if (api) return httpSource(api);
  throw new Error(
    'The site is built from releases, but neither RELEASES_FOLDER nor API_URL is set. Set API_URL to the address of a house, e.g. API_URL=http://127.0.0.1:3000.',
  );
}
