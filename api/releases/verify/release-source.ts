import { readdir, readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import type { ReleaseSource } from './verify-release.js';

const MANIFEST = 'manifest.json';

/**
 * Releases at a place: a folder of one release or of several, the address of one, or of a house.
 * @throws Error that says what was looked for
 */
export async function releasesAt(place: string): Promise<ReleaseSource[]> {
  const sources = /^https?:/.test(place) ? await atAddress(new URL(place)) : await inFolder(place);
  if (sources.length === 0)
    throw new Error(`No release was found at ${place}; expected a folder with a ${MANIFEST}, or the address of a release or of a house.`);
  return sources;
}

async function inFolder(folder: string): Promise<ReleaseSource[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
  return entries
    .filter((entry) => entry.isFile() && entry.name === MANIFEST)
    .map(({ parentPath }) => folderSource(parentPath))
    .sort((one, other) => (one.name < other.name ? -1 : 1));
}

const folderSource = (folder: string): ReleaseSource => ({
  name: folder,
  read: (path) => readFile(join(folder, path)).catch(() => null),
  list: async () => {
    const entries = await readdir(folder, { recursive: true, withFileTypes: true });
    return entries
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) => relative(folder, join(parentPath, name)).replaceAll(sep, '/'));
  },
});

async function atAddress(address: URL): Promise<ReleaseSource[]> {
  if (/\/v1\/releases\/[^/]+\/\d+\/?$/.test(address.pathname)) return [addressSource(address.href.replace(/\/?$/, '/'))];
  const listed = await fetched(new URL('/v1/releases', address).href);
  if (!listed) return [];
  const { items } = JSON.parse(new TextDecoder().decode(listed)) as { items: { edition: string; revision: number }[] };
  return items.map(({ edition, revision }) => addressSource(new URL(`/v1/releases/${edition}/${revision}/`, address).href));
}

const addressSource = (address: string): ReleaseSource => ({
  name: address,
  read: (path) => fetched(address + path),
  list: () => Promise.resolve(null),
});

async function fetched(address: string): Promise<Uint8Array | null> {
  const answer = await fetch(address);
  return answer.ok ? new Uint8Array(await answer.arrayBuffer()) : null;
}
