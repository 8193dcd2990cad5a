import type { CategoryDocument, EditionDocument } from '../../api/contract/documents/release-documents.js';
import type { ClaimsDocument } from '../../api/contract/documents/claims-document.js';
import { CELL_GROUPS, groupOf } from '../../api/contract/cell-groups.js';
import { cellsOf, changesBetween, contentCell, withContents } from '../../api/reckoning/cells.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import { inventInputs } from '../support/invent-inputs.js';

const inputs = inventInputs(4, { variants: 3, testers: 2, rigs: 1, specimens: 3 });

const documentsIn = (given: ReleaseInputs) =>
  computeRelease(given)
    .filter(({ path }) => path.startsWith('documents/'))
    .map(({ path, content }) => ({ path, document: JSON.parse(content) as object }));

const documentsOf = (given: ReleaseInputs) => shownIn(documentsIn(given));

function shownIn(documents: ReturnType<typeof documentsIn>) {
  const read = <Document>(start: string) =>
    documents.filter(({ path }) => path.startsWith(`documents/${start}`)).map(({ document }) => document as Document);
  const [edition] = read<EditionDocument>('edition.json') as [EditionDocument];
  return { tables: [{ edition, categories: read<CategoryDocument>('standings/') }], claims: read<ClaimsDocument>('claims.json')[0]! };
}

const publishedDocuments = documentsIn(inputs);
const published = shownIn(publishedDocuments);
const before = cellsOf(published);
/** Some submission without which its variant has still a result in the first category. */
const { category, rows } = published.tables[0]!.categories[0]!;
const row = rows.find(({ figure }) => figure.submissions > 1)!;
const reference = inputs.evidence.submissions.find(
  ({ variant, method }) => variant === row.variant.slug && method.slug === category.method,
)!.reference;
const without: ReleaseInputs = {
  ...inputs,
  revision: 2,
  evidence: { ...inputs.evidence, submissions: inputs.evidence.submissions.filter((one) => one.reference !== reference) },
};
const erratumAfter = (shown: typeof before) =>
  documentsOf({
    ...without,
    correction: { reasonCode: 'withdrawal', words: 'A rig was bent.', expects: [], before: shown, corrected: [] },
  }).tables[0]!.edition.erratum!;

test('a withdrawal that halves the evidence is told, though no value need change', () => {
  const { changes, consequences } = erratumAfter(before);
  const cell = (what: string) => changes.find(({ where }) => where === `${category.code}, ${row.variant.slug}, ${what}`);
  const { specimens, submissions } = row.figure;
  expect(cell('submissions')).toMatchObject({ before: String(submissions), after: String(submissions - 1) });
  expect(Number(cell('specimens')!.after)).toBeLessThan(specimens);
  expect(cell('specimens')!.before).toBe(String(specimens));
  expect(cell('interval')).toBeDefined();
  expect(consequences).toMatch(/ values? changed, \d+ places? changed, (.*, )?\d+ counts? of evidence changed, top group (un)?changed$/);
  expect(consequences).toMatch(/\d+ intervals? changed/);
});

test('what readers care about first comes first', () => {
  const groups = erratumAfter(before).changes.map(({ where }) => groupOf(where));
  expect([...new Set(groups)]).toEqual(CELL_GROUPS.filter((group) => groups.includes(group)));
  expect(new Set(groups).size).toBeGreaterThan(2);
});

test('every published figure of a table and every claim is a cell', () => {
  const at = (what: string) => before.cells[`${category.code}, ${row.variant.slug}, ${what}`];
  const { figure, movement } = row;
  expect(at('interval')).toBe(figure.low === null ? 'not stated' : `${figure.low} to ${figure.high} ${figure.unit}`);
  expect([at('specimens'), at('testers'), at('rigs')]).toEqual([figure.specimens, figure.testers, figure.rigs].map(String));
  expect(at('movement')).toContain(movement.kind);
  for (const what of ['group', 'chance']) expect(at(what)).toBeDefined();
  const { variant, claims } = published.claims.items.find((item) => item.claims.length > 0)!;
  expect(before.cells[`label, ${variant.slug}, ${claims[0]!.quantity}`]).toContain(claims[0]!.printed.text);
});

test('against a revision that was told in places, scores and values alone, these alone are told', () => {
  const old = Object.fromEntries(Object.entries(before.cells).filter(([where]) => /, (place|score|value)$/.test(where)));
  expect(erratumAfter({ cells: old, top: before.top }).changes.every(({ where }) => /, (place|score|value)$/.test(where))).toBe(true);
  expect(changesBetween({ cells: old, top: before.top }, before)).toEqual([]);
  const withoutClaims = cellsOf({ ...published, claims: null });
  expect(changesBetween(withoutClaims, before)).toEqual([]);
  expect(changesBetween({ ...before, cells: {} }, before)).toHaveLength(Object.keys(before.cells).length);
});

const toldWhole = withContents(
  before,
  publishedDocuments.map(({ path, document }) => contentCell(path, document)),
);
const correction = { reasonCode: 'catalogueError', words: 'Put right.', expects: [], before: toldWhole, corrected: [] } as const;
const erratumIn = (given: ReleaseInputs) => documentsOf({ ...given, revision: 2, correction }).tables[0]!.edition.erratum!;

/** Every kind of place in a document, with one of it said otherwise: the path without numbers → the document. */
function saidOtherwise(document: object): Map<string, object> {
  const found = new Map<string, object>();
  const walk = (value: unknown, path: readonly string[], put: (other: unknown) => object): void => {
    if (typeof value === 'object' && value !== null) {
      for (const [name, inner] of Object.entries(value))
        walk(inner, [...path, /^\d+$/.test(name) ? '*' : name], (other) =>
          put(Array.isArray(value) ? value.with(Number(name), other) : { ...value, [name]: other }),
        );
      return;
    }
    if (!found.has(path.join('/'))) found.set(path.join('/'), put(typeof value === 'string' ? `${value}x` : [value]));
  };
  walk(document, [], (other) => other as object);
  return found;
}

test('whatever place of whatever document says something else, it is a changed cell', () => {
  const ofRevision = /(^|\/)(formatVersion|revision|publishedAt|citation|isCorrected|erratum)(\/|$)/;
  let places = 0;
  const unseen: string[] = [];
  const digestOf = (path: string, document: object) => withContents({ cells: {}, top: [], kinds: [] }, [contentCell(path, document)]);
  for (const { path, document } of publishedDocuments) {
    const told = digestOf(path, document);
    for (const [place, other] of saidOtherwise(document)) {
      places += 1;
      const isTold = changesBetween(told, digestOf(path, other)).length > 0;
      if (isTold === ofRevision.test(place)) unseen.push(`${path} ${place}`);
    }
  }
  expect(unseen).toEqual([]);
  expect(places).toBeGreaterThan(1000);
});

test('an erratum names what changed alone, documents without a cell of their own too; nothing changed says so', () => {
  const { evidence } = inputs;
  const instruments = evidence.instruments.map((one) => ({ ...one, name: `${one.name}, mended` }));
  const renamed = erratumIn({ ...inputs, evidence: { ...evidence, instruments } });
  expect(renamed.changes.map(({ where }) => where)).toEqual(['documents/rigs.json, content']);
  expect(renamed.consequences).toBe('1 document changed, top group unchanged');
  expect(erratumIn(inputs)).toMatchObject({ changes: [], consequences: 'nothing that is published changed, top group unchanged' });
  expect(erratumIn({ ...without, revision: 2 }).consequences).not.toMatch(/(^|, )0 /);
});

test('what was superseded under results is told with them: in the edition, beside the variant, and as a changed cell', () => {
  const superseded = [
    { kind: 'calibration', what: 'C-1 of R1', was: 'coverage factor 3', reason: 'Read again.', on: '2026-03-01', submissions: [reference] },
  ] as const;
  const given: ReleaseInputs = {
    ...inputs,
    evidence: { ...inputs.evidence, superseded: superseded.map((one) => ({ ...one, submissions: [reference] })) },
  };
  const documents = documentsIn(given);
  expect(shownIn(documents).tables[0]!.edition.superseded).toEqual(superseded);
  const told = documents.filter(({ path, document }) => path.startsWith('documents/variants/') && 'superseded' in document);
  expect(told.map(({ path }) => path)).toEqual([`documents/variants/${row.variant.slug}.json`]);
  const { changes, consequences } = erratumIn(given);
  expect(changes).toContainEqual({
    where: 'calibration C-1 of R1, 2026-03-01, superseded',
    before: null,
    after: `It said: coverage factor 3. Read again. Rested on it: ${reference}`,
  });
  expect(consequences).toMatch(/^1 row of the record changed, \d+ documents changed, top group unchanged$/);
});

test('a maker of lines in several divisions is one cell: every result that rested on it, and each thing that it said', () => {
  const table = (submissions: readonly string[], was = 'name Tarn') => ({
    edition: {
      ...published.tables[0]!.edition,
      superseded: [{ kind: 'maker' as const, what: 'tarn', was, reason: 'Mistyped.', on: '2026-03-01', submissions: [...submissions] }],
    },
    categories: [],
  });
  const tables = [table(['S-00002']), table(['S-00001']), table(['S-00001'], 'name Tran')];
  expect(cellsOf({ tables }).cells['maker tarn, 2026-03-01, superseded']).toBe(
    'It said: name Tarn. Mistyped. Rested on it: S-00001, S-00002 It said: name Tran. Mistyped. Rested on it: S-00001',
  );
});
