import type { EditionDocument, VariantDocument } from '../contract/documents/release-documents.js';
import { cellsOf, contentCell, withContents } from './cells.js';
import { bundleOf } from './documents/bundle.js';
import type { Tables } from './documents/bundle.js';
import { catalogueDocument, methodDocuments } from './documents/catalogue-documents.js';
import { categoryDocuments } from './documents/category-document.js';
import { claimsDocument } from './documents/claims-document.js';
import { compare } from './documents/compare.js';
import { editionDocument, editionOfDivisions } from './documents/edition-document.js';
import { pairsDocument } from './documents/pairs-document.js';
import { RETOLD, retoldOf } from './documents/retold.js';
import { retestsDocument } from './documents/retests-document.js';
import { rigsDocument } from './documents/rigs-document.js';
import { roundRobinsDocument } from './documents/round-robins-document.js';
import { contextOf, settled } from './documents/release-context.js';
import type { EditionContext, ReleaseContext } from './documents/release-context.js';
import { houseDocument, remarksDocument, statementFiles } from './documents/statement-documents.js';
import { SENSITIVITY, sensitivityDocument } from './documents/sensitivity.js';
import { newestPoint, variantDocument } from './documents/variant-document.js';
import { withdrawnDocument } from './documents/withdrawn-document.js';
import { computeErratum, erratumWithin } from './erratum.js';
import type { SpreadsEvidence } from './evidence/effects-evidence.js';
import { recordsDocument } from './longitudinal/records-document.js';
import { inParts, jsonInParts, whole } from './release-files.js';
import type { FileInParts, ReleaseFile } from './release-files.js';
import type { ReleaseInputs } from './release-inputs.js';
import { readmeFile } from './release-readme.js';
import { ReleaseTables } from './tables/release-tables.js';
import { spreadsFound } from './rigs/season-spreads.js';

/** Computes every file of a release from its inputs. Pure: the same inputs give the same bytes. */
export const computeRelease = (inputs: ReleaseInputs): ReleaseFile[] => [...computeInParts(inputs)].map(whole);

/** The same one file after the other: of a large edition nobody holds them all. Each is to be read before the next is asked for. */
export function* computeInParts(inputs: ReleaseInputs): Generator<FileInParts> {
  const { spreads, ...edition } = compared(inputs);
  const told = withErratum(inputs, edition);
  yield inParts(readmeFile(inputs));
  yield* wholeFiles(inputs, edition, told, spreads);
  const tables = new ReleaseTables();
  yield* documentsWith(edition, told, (variant) => tables.add(variant));
  yield* standingFiles(inputs, edition);
  yield* tables.files(told.tables);
  if (inputs.blindKey !== null) yield inParts({ path: 'blind-key.txt', mediaType: 'text/plain; charset=utf-8', content: inputs.blindKey });
  yield inParts(tables.dataPackage(inputs));
}

/** All that the edition was computed from and gave, and what later ones take of it. */
function* wholeFiles(
  inputs: ReleaseInputs,
  edition: Compared,
  { tables, changed }: Told,
  spreads: SpreadsEvidence,
): Generator<FileInParts> {
  const bundle = bundleOf(inputs, edition.context, tables);
  yield jsonInParts('bundle.json', bundle);
  const points = pairedWithTables(edition, tables).map(([own, variant, ownTables]) => ({
    variant,
    history: [newestPoint(own, variant, ownTables, changed)],
  }));
  yield jsonInParts(RETOLD, retoldOf(bundle.outputs, points, spreads));
}

interface Compared {
  readonly context: EditionContext;
  /** What is compared, one a division. */
  readonly divisions: readonly ReleaseContext[];
}

/** What the model found of the edition is let go of once all is drawn. */
function compared(inputs: ReleaseInputs) {
  const fitted = contextOf(inputs);
  const divisions = compare(fitted);
  return { divisions, spreads: spreadsFound(fitted.computed), context: { ...fitted, computed: settled(fitted.computed) } };
}

interface Told {
  readonly erratum: EditionDocument['erratum'];
  /** Cells that an erratum changed, this one or one before. */
  readonly changed: ReadonlySet<string>;
  /** One a division. */
  readonly tables: readonly Tables[];
}

function withErratum(inputs: ReleaseInputs, edition: Compared): Told {
  const uncorrected = edition.divisions.map((one) => ({ edition: editionDocument(one, null), categories: categoryDocuments(one) }));
  const { correction } = inputs;
  if (!correction) return { erratum: null, changed: new Set(), tables: uncorrected };
  const shown = cellsOf({
    tables: uncorrected,
    claims: claimsDocument(edition.context),
    house: houseDocument(inputs),
    remarks: remarksDocument(inputs),
  });
  const isToldByDocuments = correction.before.kinds?.includes('content');
  const after = isToldByDocuments ? withContents(shown, uncorrectedDocuments(inputs, edition, uncorrected)) : shown;
  const erratum = computeErratum(correction, after);
  return {
    erratum,
    changed: new Set([...correction.corrected, ...erratum.changes.map(({ where }) => where)]),
    tables: uncorrected.map(({ edition: table, categories }) => ({
      categories,
      edition: { ...table, erratum: table.division ? erratumWithin(table.division.slug, correction, after) : erratum },
    })),
  };
}

function* uncorrectedDocuments(inputs: ReleaseInputs, edition: Compared, tables: readonly Tables[]) {
  for (const files of [standingFiles(inputs, edition), documentsWith(edition, { erratum: null, changed: new Set(), tables })])
    for (const file of files) yield contentCell(file.path, JSON.parse(whole(file).content) as object);
}

/** Documents that say nothing of an erratum. */
function* standingFiles(inputs: ReleaseInputs, { context, divisions }: Compared): Generator<FileInParts> {
  for (const one of divisions) {
    yield jsonInParts(`${folderOf(one)}/records.json`, recordsDocument(one));
    yield jsonInParts(`${folderOf(one)}/pairs.json`, pairsDocument(one));
    yield jsonInParts(`${folderOf(one)}/${SENSITIVITY}`, sensitivityDocument(one));
  }
  yield jsonInParts('documents/claims.json', claimsDocument(context));
  yield jsonInParts('documents/round-robins.json', roundRobinsDocument(inputs));
  yield jsonInParts('documents/retests.json', retestsDocument(inputs));
  yield jsonInParts('documents/withdrawn.json', withdrawnDocument(inputs));
  yield jsonInParts('documents/rigs.json', rigsDocument(context));
  yield* statementFiles(inputs).map(inParts);
  yield jsonInParts('documents/catalogue.json', catalogueDocument(context));
  for (const method of methodDocuments(context)) yield jsonInParts(`documents/methods/${method.slug}-${method.number}.json`, method);
}

/** Documents that tell of the erratum, or of cells that one changed. */
function* documentsWith(edition: Compared, { erratum, changed, tables }: Told, note?: (variant: VariantDocument) => void) {
  const { context, divisions } = edition;
  const several = context.evidence.edition.divisions;
  if (several) yield jsonInParts('documents/edition.json', editionOfDivisions(context, several, erratum));
  for (const [i, one] of divisions.entries()) if (tables[i]) yield* tableFiles(one, tables[i]);
  for (const [own, variant, ownTables] of pairedWithTables(edition, tables)) {
    const document = variantDocument(own, variant, ownTables, changed);
    note?.(document);
    yield jsonInParts(`documents/variants/${variant.slug}.json`, document);
  }
}

/** The tables of what is compared: at the top of the documents where there is one, else in a folder of the division. */
function* tableFiles(context: ReleaseContext, { edition, categories }: Tables): Generator<FileInParts> {
  const folder = folderOf(context);
  yield jsonInParts(`${folder}/edition.json`, edition);
  for (const document of categories) yield jsonInParts(`${folder}/standings/${document.category.code}.json`, document);
}

const folderOf = ({ division }: ReleaseContext): string => (division ? `documents/divisions/${division.slug}` : 'documents');

/** Each entry with what it is compared in, in the order of the inputs. */
function pairedWithTables({ context, divisions }: Compared, tables: readonly Tables[]) {
  const [whole] = divisions;
  const at = new Map(divisions.flatMap(({ division }, i) => (division?.variants ?? []).map((slug) => [slug, i] as const)));
  return context.variants.flatMap((variant) => {
    const i = whole?.division ? at.get(variant.slug) : 0;
    const [own, ownTables] = i === undefined ? [] : [divisions[i], tables[i]];
    return own && ownTables ? [[own, variant, ownTables] as const] : [];
  });
}
