import { say } from '../words/say.js';
import type { APIRoute } from 'astro';
import type { ReleaseSummary } from '../../../api/contract/documents/release-documents.js';
import type { Release, Tables } from '../release/load-release.js';
import { loadReleases } from '../release/load-releases.js';
import { valuesSentence } from '../words/change-sentences.js';
import { escapeXml as escape } from '../words/escape-xml.js';
import { setWords } from '../words/lead-words.js';
import { fullName } from '../words/variant-words.js';

/** What happened: the erratum, or who came first in each division and what changed since the edition before. */
async function happened(release: Release): Promise<string> {
  const { erratum } = release.summary;
  if (erratum) return `${erratum.words} ${erratum.consequences}`;
  const told = await Promise.all((await release.tables()).map(toldOf));
  return told.join(' ');
}

async function toldOf(tables: Tables): Promise<string> {
  const document = await tables.edition();
  const categories = await Promise.all(document.scheme.categories.map(({ code }) => tables.category(code)));
  const first = document.overall.filter(({ place }) => place === 1).map(({ variant }) => fullName(variant));
  const set = setWords(document.overall);
  const came = first.length > 1 ? say`share first place` : say`came first`;
  const lead = first.length === 0 ? say`no place is given` : `${first.join(say` and `)} ${came}${set && `; ${set}`}`;
  return `${document.division ? `${document.division.name}: ` : ''}${lead}. ${valuesSentence(categories)}`.trim();
}

function entry(
  { edition, editionName, revision, status, digest, publishedAt, erratum }: ReleaseSummary,
  summary: string,
  absolute: (path: string) => string,
): string {
  const page = status === 'superseded' ? `/editions/${edition}/revisions/${revision}/` : `/editions/${edition}/`;
  const title = erratum ? say`Erratum: ${editionName}, revision ${revision}` : say`${editionName}, revision ${revision}`;
  return `<entry><id>urn:sha256:${digest}</id><title>${escape(title)}</title><updated>${publishedAt}</updated><link href="${escape(absolute(page))}"/><summary>${escape(summary)}</summary></entry>`;
}

/** Atom feed (RFC 4287) of releases and errata, newest first. */
export const GET: APIRoute = async ({ site }) => {
  const { current, superseded } = await loadReleases();
  const releases = [...current, ...superseded].sort((one, other) => other.summary.publishedAt.localeCompare(one.summary.publishedAt));
  const house = (await current[0]?.edition())?.house ?? say`Line tests`;
  const absolute = (path: string) => (site ? new URL(path, site).href : path);
  // A feed without entries still needs a date; that of the epoch says that nothing has happened yet.
  const updated = releases[0]?.summary.publishedAt ?? '1970-01-01T00:00:00Z';
  const head = `<id>${escape(absolute('/feed.xml'))}</id><title>${escape(say`${house}: releases and errata`)}</title><updated>${updated}</updated><author><name>${escape(house)}</name></author><link rel="self" href="${escape(absolute('/feed.xml'))}"/><link href="${escape(absolute('/'))}"/>`;
  const entries = (await Promise.all(releases.map(async (release) => entry(release.summary, await happened(release), absolute)))).join('');
  return new Response(`<?xml version="1.0" encoding="utf-8"?><feed xmlns="http://www.w3.org/2005/Atom">${head}${entries}</feed>`);
};
