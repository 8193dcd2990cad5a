import { say } from '../words/say.js';
import { escapeXml } from '../words/escape-xml.js';
import { BADGE } from './badge.js';
import type { EmbedAddresses } from './embed-places.js';

/** What somebody pastes into a page, with what it keeps showing. */
export interface Snippet {
  readonly shows: string;
  readonly html: string;
}

interface Frame {
  /** Address of this site. */
  readonly site: URL;
  readonly at: EmbedAddresses;
  /** What is shown, without a figure that may change. */
  readonly name: string;
  readonly edition: string;
  readonly revision: number;
  /** Whether a later revision took its place. */
  readonly isSuperseded: boolean;
}

/** The pages that a badge leads to, in the order of its addresses. */
type Links = EmbedAddresses;

export const tableSnippets = (frame: Frame): Snippet[] =>
  choices(frame, (which) => {
    const src = new URL(frame.at[which], frame.site).href;
    return `<iframe src="${src}" title="${escapeXml(frame.name)}" width="100%" height="640" loading="lazy"></iframe>`;
  });

export const badgeSnippets = (frame: Frame, links: Links): Snippet[] =>
  choices(frame, (which) => {
    const href = new URL(links[which], frame.site).href;
    const src = new URL(frame.at[which], frame.site).href;
    return `<a href="${href}"><img src="${src}" alt="${escapeXml(frame.name)}" width="${BADGE.width}" height="${BADGE.height}" style="max-width:100%;height:auto" loading="lazy"></a>`;
  });

function choices({ edition, revision, isSuperseded }: Frame, html: (which: keyof EmbedAddresses) => string): Snippet[] {
  const pinned = { shows: say`Revision ${revision} of ${edition}, for ever`, html: html('pinned') };
  if (isSuperseded) return [pinned];
  return [
    { shows: say`The newest edition that has it, in its current revision`, html: html('newest') },
    { shows: say`${edition}, in its current revision`, html: html('edition') },
    pinned,
  ];
}
