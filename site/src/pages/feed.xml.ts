import type { APIRoute } from 'astro';
import type { ReleaseSummary } from '../../../api/contract/documents/release-documents.js';
import { loadReleases } from '../release/load-releases.js';
import { escapeXml as escape } from '../words/escape-xml.js';

function entry(
  { edition, editionName, revision, status, digest, publishedAt, erratum }: ReleaseSummary,
  absolute: (path: string) => string,
): string {
  const page = status === 'superseded' ? `/editions/${edition}/revisions/${revision}/` : `/editions/${edition}/`;
  const title = erratum ? `Erratum: ${editionName}, revision ${revision}` : `${editionName}, revision ${revision}`;
  const summary = erratum ? `${erratum.words} ${erratum.consequences}` : `Published: ${editionName}.`;
  return `<entry><id>urn:sha256:${digest}</id><title>${escape(title)}</title><updated>${publishedAt}</updated><link href="${escape(absolute(page))}"/><summary>${escape(summary)}</summary></entry>`;
}

/** Atom feed (RFC 4287) of releases and errata, newest first. */
export const GET: APIRoute = async ({ site }) => {
  const { current, superseded } = await loadReleases();
  const summaries = [...current, ...superseded]
    .map(({ summary }) => summary)
    .sort((one, other) => other.publishedAt.localeCompare(one.publishedAt));
  const house = (await current[0]?.edition())?.house ?? 'Line tests';
  const absolute = (path: string) => (site ? new URL(path, site).href : path);
  // A feed without entries still needs a date; that of the epoch says that nothing has happened yet.
  const updated = summaries[0]?.publishedAt ?? '1970-01-01T00:00:00Z';
  const head = `<id>${escape(absolute('/feed.xml'))}</id><title>${escape(house)}: releases and errata</title><updated>${updated}</updated><author><name>${escape(house)}</name></author><link rel="self" href="${escape(absolute('/feed.xml'))}"/><link href="${escape(absolute('/'))}"/>`;
  const entries = summaries.map((summary) => entry(summary, absolute)).join('');
  return new Response(`<?xml version="1.0" encoding="utf-8"?><feed xmlns="http://www.w3.org/2005/Atom">${head}${entries}</feed>`);
};
