/** What readers see of a revision, cell by cell, and how two revisions differ, what readers care about first. Pure. */
import type { HouseDocument } from '../contract/documents/house-document.js';
import type { RemarksDocument } from '../contract/documents/remarks-document.js';
import { HOUSE_PARTS } from '../contract/endpoints/statements.js';
import type { ClaimsDocument } from '../contract/documents/claims-document.js';
import type { CategoryDocument, CategoryRow, EditionDocument, OverallRow } from '../contract/documents/release-documents.js';
import { CELL_GROUPS, CELL_KINDS, groupOf, kindOf } from '../contract/cell-groups.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import { canonicalJson } from './canonical-json.js';
import { partsOf } from './cells-by-division.js';
import type { Superseded } from '../contract/superseded.js';
import type { RevisionCells } from './release-inputs.js';

export interface Revision {
  /** One a division. */
  readonly tables: readonly { readonly edition: EditionDocument; readonly categories: readonly CategoryDocument[] }[];
  /** Null of a release from before there was such a document. */
  readonly claims?: ClaimsDocument | null;
  readonly house?: HouseDocument | null;
  readonly remarks?: RemarksDocument | null;
}

export interface CellChange {
  readonly where: string;
  /** That it is of; absent where it is of the whole edition, or of an edition with one. */
  readonly division?: string;
  readonly before: string | null;
  readonly after: string | null;
}

/** Cells that the first errata were told in. */
const FIRST_KINDS = ['place', 'score', 'value'];

/** Where the value of a variant in a category stands. */
export const valueCell = (category: string, variant: string): string => `${category}, ${variant}, value`;

/** Every cell that readers see in a table, by where it stands. */
export function cellsOf({ tables, claims = null, house = null, remarks = null }: Revision): RevisionCells {
  const overall = tables.flatMap(({ edition }) => edition.overall.flatMap((row) => overallCells(row)));
  const byCategory = tables
    .flatMap(({ categories }) => categories)
    .flatMap(({ category, rows }) => rows.flatMap((row) => categoryCells(category.code, row)));
  const labels = claims ? claims.items.flatMap(claimCells) : [];
  const documents: Readonly<Record<string, unknown>> = { claim: claims, words: remarks, statement: house };
  const kinds = CELL_KINDS.filter((kind) => documents[kind] !== null && kind !== 'content');
  const said = [...(remarks ? remarkCells(remarks) : []), ...(house ? houseCells(house) : [])];
  const superseded = supersededCells(tables.flatMap(({ edition }) => edition.superseded ?? []));
  const divisions = tables.flatMap(divisionOf);
  return {
    cells: Object.fromEntries([...overall, ...byCategory, ...labels, ...said, ...superseded]),
    top: tables.flatMap(topOf),
    kinds,
    ...(divisions.length > 0 && { divisions }),
  };
}

function divisionOf({ edition: { division, overall, incomplete, excluded } }: Revision['tables'][number]) {
  const variants = new Set([...overall, ...incomplete, ...excluded].map(({ variant }) => variant.slug));
  return division ? [{ ...division, variants: [...variants].sort() }] : [];
}

function topOf({ edition: { overall } }: Revision['tables'][number]): string[] {
  const hasGroups = overall.some(({ group }) => group !== null);
  return overall.filter(({ place, group }) => (hasGroups ? group === 1 : place === 1)).map(({ variant }) => variant.slug);
}

type Cell = readonly [where: string, text: string];

function overallCells(row: OverallRow): Cell[] {
  const { variant, place, placeIfIncluded, score, placeInterval } = row;
  const at = (what: string) => `overall, ${variant.slug}, ${what}`;
  return [
    [at('place'), place === null ? `(${placeIfIncluded ?? 'unplaced'})` : String(place)],
    [at('score'), score],
    [at('interval'), placeInterval ? `${placeInterval.low} to ${placeInterval.high}` : NOT_STATED],
    ...certaintyCells(at, row),
  ];
}

function categoryCells(code: string, row: CategoryRow): Cell[] {
  const { variant, place, figure } = row;
  const at = (what: string) => `${code}, ${variant.slug}, ${what}`;
  const { value, unit, low, high, specimens, submissions, testers, rigs } = figure;
  return [
    [at('place'), String(place ?? 'unplaced')],
    [at('value'), `${value} ${unit}`],
    [at('interval'), low === null || high === null ? NOT_STATED : `${low} to ${high} ${unit}`],
    ...certaintyCells(at, row),
    ...Object.entries({ specimens, submissions, testers, rigs }).map(([what, count]): Cell => [at(what), String(count)]),
  ];
}

const NOT_STATED = 'not stated';

const certaintyCells = (at: (what: string) => string, { group, chanceOfFirstPercent, movement }: OverallRow | CategoryRow): Cell[] => [
  [at('group'), group === null ? NOT_STATED : String(group)],
  [at('chance'), chanceOfFirstPercent === null ? NOT_STATED : `${chanceOfFirstPercent} %`],
  [at('movement'), movement.places === null ? movement.kind : `${movement.kind} ${movement.places}`],
];

const claimCells = ({ variant, claims }: ClaimsDocument['items'][number]): Cell[] =>
  claims.map(({ quantity, printed, ratioPercent, decision }) => [
    `label, ${variant.slug}, ${quantity}`,
    `${printed.text} ${printed.unit}, ${ratioPercent === null ? 'not measured' : `${ratioPercent} %`}${decision === null ? '' : `, ${decision}`}`,
  ]);

/** A cell for all that is said of one thing. */
const remarkCells = ({ items }: RemarksDocument): Cell[] =>
  [
    ...Map.groupBy(items, ({ kind, about, category }) => [kind, about.slug, ...(category === null ? [] : [category]), 'words'].join(', ')),
  ].map(([where, said]): Cell => [where, said.map(({ words, signedBy, on }) => `${words} (${signedBy}, ${on})`).join(' ')]);

const houseCells = (house: HouseDocument): Cell[] =>
  HOUSE_PARTS.map((part) => {
    const said = house[part];
    const text = typeof said === 'string' ? said : (said ?? []).map(({ name, does }) => `${name}: ${does}`).join('; ');
    return [`house, ${part}, statement`, text || NOT_STATED];
  });

/** A cell for each row and day: what it said, and every result that rested on it, in whatever division. */
const supersededCells = (rows: readonly Superseded[]): Cell[] =>
  [...Map.groupBy(rows, ({ kind, what, on }) => `${kind} ${what}, ${on}, superseded`)].map(([where, said]) => [
    where,
    [...Map.groupBy(said, ({ was, reason }) => `It said: ${was}. ${reason}`)]
      .map(([words, ones]) => `${words} Rested on it: ${[...new Set(ones.flatMap(({ submissions }) => submissions))].sort().join(', ')}`)
      .join(' '),
  ]);

/** The same with the contents of all documents: nothing that is published changes unseen. */
export const withContents = (shown: RevisionCells, contents: Iterable<Cell>): RevisionCells => ({
  ...shown,
  cells: { ...shown.cells, ...Object.fromEntries(contents) },
  kinds: CELL_KINDS,
});

/** Digest of a document, but for what every revision says otherwise. @param path in the release */
export const contentCell = (path: string, document: object): Cell => [`${path}, content`, sha256(canonicalJson(besideRevision(document)))];

/** Tells of the revision, not of what it shows. */
const OF_REVISION = ['formatVersion', 'revision', 'publishedAt', 'erratum', 'citation', 'isCorrected'];

const besideRevision = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (name, inner: unknown) => (OF_REVISION.includes(name) ? undefined : inner)));

/** Cells that differ, division by division: in another division an entry's place is another place, whatever it says. */
export const changesBetween = (before: RevisionCells, after: RevisionCells): CellChange[] =>
  partsOf(before, after).flatMap(({ division, ...part }) =>
    changesIn(part.before, part.after).map((change) => ({ ...change, ...(division && { division: division.slug }) })),
  );

/** Those of one, what readers care about first; of a revision that was told in fewer kinds of cells, those kinds alone. */
function changesIn(before: RevisionCells, after: RevisionCells): CellChange[] {
  const kinds = new Set([...(before.kinds ?? FIRST_KINDS).filter((kind) => (after.kinds ?? []).includes(kind)), 'superseded']);
  const changes = [...new Set([...Object.keys(before.cells), ...Object.keys(after.cells)])]
    .filter((where) => kinds.has(kindOf(where)) && before.cells[where] !== after.cells[where])
    .sort()
    .map((where) => ({ where, before: before.cells[where] ?? null, after: after.cells[where] ?? null }));
  const weight = ({ where }: CellChange) => CELL_GROUPS.indexOf(groupOf(where));
  return before.kinds === undefined ? changes : changes.toSorted((one, other) => weight(one) - weight(other));
}
