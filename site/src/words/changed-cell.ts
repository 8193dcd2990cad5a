import { groupOf } from '../../../api/contract/cell-groups.js';
import type { PublishedClaim } from '../../../api/contract/documents/release-documents.js';
import { decisionWords } from './claim-words.js';
import { formatDate } from './format-date.js';
import { say } from './say.js';

type Decided = Pick<PublishedClaim, 'decision' | 'quantity'>;
const DECISIONS: readonly PublishedClaim['decision'][] = ['meets', 'probablyMeets', 'cannotSay', 'probablyFallsShort', 'fallsShort'];
/** So much of a digest tells it from another; the whole stands in the files. */
const DIGITS = 8;
/** The day at the end of what was signed. */
const SIGNED_ON = /\d{4}-\d{2}-\d{2}(?=\)$)/;

/** What stood or stands in a cell that an erratum changed, as readers are told it elsewhere: an interval in the language of the page, a decision on a label in words, a digest by its beginning, what was signed with its day. */
export function changedCell(where: string, text: string): string {
  if (/^[0-9a-f]{64}$/.test(text)) return `${text.slice(0, DIGITS)}…`;
  if (groupOf(where) === 'intervals') return text.replace(/^(\S+) to (\S+)/, (_, low: string, high: string) => say`${low} to ${high}`);
  if (groupOf(where) === 'words') return text.replace(SIGNED_ON, formatDate);
  if (groupOf(where) !== 'claims') return text;
  const quantity = where.split(', ').at(-1) as Decided['quantity'];
  const said = (part: string) => DECISIONS.find((decision) => decision === part);
  return text
    .split(', ')
    .map((part) => (said(part) ? decisionWords({ decision: said(part) ?? null, quantity }) : part))
    .join(', ');
}
