import { say } from './say.js';
import { counted } from './counted.js';
import type { CategoryDocument, EditionDocument, VariantName } from '../../../api/contract/documents/release-documents.js';
import { comparabilityWords } from './comparability-words.js';
import { listed } from './listed.js';
import { withinSentence } from './locale.js';

const MOST_NAMED = 3;
const shortName = ({ line, size }: VariantName) => `${line.name} ${size}`;
/** `A, B, C and 4 more` */
const named = (names: readonly string[]): string =>
  names.slice(0, MOST_NAMED).join(', ') + (names.length > MOST_NAMED ? say` and ${names.length - MOST_NAMED} more` : '');

/** Which values changed beyond noise, the largest changes first; empty where none could be compared. */
export function valuesSentence(categories: readonly CategoryDocument[]): string {
  const rows = categories.flatMap(({ category, rows }) => rows.map((row) => ({ ...row, category })));
  const compared = rows.filter(({ change }) => change.kind === 'changed' || change.kind === 'withinNoise');
  if (compared.length === 0) return '';
  const changed = compared
    .filter(({ change }) => change.kind === 'changed')
    .toSorted((one, other) => Math.abs(Number(other.change.percent)) - Math.abs(Number(one.change.percent)));
  if (changed.length === 0) return say`None of ${compared.length} values changed beyond noise.`;
  const most = changed.map(({ variant, category, change }) => {
    const percent = change.percent ?? '';
    return `${shortName(variant)} (${withinSentence(category.name)} ${percent.startsWith('-') ? percent.replace('-', '−') : `+${percent}`} %)`;
  });
  return say`${changed.length} of ${compared.length} values changed beyond noise: ${named(most)}.`;
}

/** Who is new, who is back, who is gone. @param gone variants of the edition before that are not in this one */
export function entriesSentence({ overall }: Pick<EditionDocument, 'overall'>, gone: readonly VariantName[]): string {
  const of = (kind: string) => overall.filter(({ movement }) => movement.kind === kind).map(({ variant }) => shortName(variant));
  const parts = [
    [of('new'), say`is new`, say`are new`],
    [of('returned'), say`is back`, say`are back`],
    [gone.map(shortName), say`is gone`, say`are gone`],
  ] as const;
  const said = parts
    .filter(([names]) => names.length > 0)
    .map(([names, one, many]) => `${counted(names.length, one, many)} (${named(names)})`);
  return said.length === 0 ? say`The same variants were tested.` : `${said.join('; ')}.`;
}

/** What the methods changed. */
export function methodsSentence({ scheme }: Pick<EditionDocument, 'scheme'>): string {
  const changed = scheme.categories.filter(({ comparability }) => comparability !== 'same');
  if (changed.length === 0) return say`The methods are those of the edition before.`;
  const alike = Map.groupBy(changed, ({ comparability }) => comparability);
  return [...alike]
    .map(([comparability, all]) => `${listed(all.map(({ name }) => name))}: ${comparabilityWords[comparability]}.`)
    .join(' ');
}
