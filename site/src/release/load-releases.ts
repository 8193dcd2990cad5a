import { z } from 'zod';
import { releaseSummarySchema } from '../../../api/contract/documents/release-documents.js';
import { fetchBytes } from './fetch-bytes.js';
import { loadRelease, type Release } from './load-release.js';

/** All releases: of each edition its current one, newest edition first, and those that a later revision replaced. */
export interface Releases {
  current: Release[];
  superseded: Release[];
}

const listSchema = z.object({ items: z.array(releaseSummarySchema) });
let loaded: Promise<Releases> | null = null;

async function load(): Promise<Releases> {
  const bytes = await fetchBytes('/v1/releases');
  if (!bytes) throw new Error('The API has no /v1/releases. Set API_URL to the address of this program, without a path.');
  const { items } = listSchema.parse(JSON.parse(new TextDecoder().decode(bytes)));
  const releases = await Promise.all(items.map(loadRelease));
  return {
    current: releases.filter(({ summary }) => summary.status === 'published'),
    superseded: releases.filter(({ summary }) => summary.status === 'superseded'),
  };
}

/** The releases that this build shows, fetched once. */
export function loadReleases(): Promise<Releases> {
  loaded ??= load();
  return loaded;
}
