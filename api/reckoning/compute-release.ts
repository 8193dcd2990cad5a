import type { EditionDocument, VariantDocument, VariantName } from '../contract/documents/release-documents.js';
import { cellsOf, withContents } from './cells.js';
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
import { contextOf } from './documents/release-context.js';
import type { EditionContext, ReleaseContext } from './documents/release-context.js';
import { houseDocument, remarksDocument, statementFiles } from './documents/statement-documents.js';
import { SENSITIVITY, sensitivityDocument } from './documents/sensitivity.js';
import { variantDocuments } from './documents/variant-document.js';
import { withdrawnDocument } from './documents/withdrawn-document.js';
import { computeErratum } from './erratum.js';
import { recordsDocument } from './longitudinal/records-document.js';
import { jsonFile } from './release-files.js';
import type { ReleaseFile } from './release-files.js';
import type { ReleaseInputs } from './release-inputs.js';
import { readmeFile } from './release-readme.js';
import { catalogueTables } from './tables/catalogue-tables.js';
import { csvFile } from './tables/csv-file.js';
import { dataPackageFile } from './tables/data-package.js';
import { evidenceTables } from './tables/evidence-tables.js';
import { spreadsFound } from './rigs/season-spreads.js';
import { standingsTables } from './tables/standings-tables.js';

/** Computes every file of a release from its inputs. Pure: the same inputs give the same bytes. */
export function computeRelease(inputs: ReleaseInputs): ReleaseFile[] {
  const context = contextOf(inputs);
  const compared = compare(context);
  const uncorrected = compared.map((one) => ({ edition: editionDocument(one, null), categories: categoryDocuments(one) }));
  const standing = standingFiles(inputs, context, compared);
  const told = (erratum: Erratum, cells: ReadonlySet<string>) =>
    filesWithErratum(context, compared, uncorrected, { erratum, cells, several: inputs.evidence.edition.divisions });
  const { correction } = inputs;
  const shown = cellsOf({
    tables: uncorrected,
    claims: claimsDocument(context),
    house: houseDocument(inputs),
    remarks: remarksDocument(inputs),
  });
  const isToldByDocuments = correction?.before.kinds?.includes('content');
  const after = isToldByDocuments ? withContents(shown, documentsIn([...standing, ...told(null, new Set()).files])) : shown;
  const erratum = correction && computeErratum(correction, after);
  const changed = new Set([...(correction?.corrected ?? []), ...(erratum?.changes ?? []).map(({ where }) => where)]);
  const { divisions, variants, files } = told(erratum, changed);
  const tables = [...catalogueTables(variants), ...standingsTables(divisions, variants), ...evidenceTables(variants)];
  const bundle = bundleOf(inputs, context, divisions);
  return [
    readmeFile(inputs),
    jsonFile('bundle.json', bundle),
    jsonFile(RETOLD, retoldOf(bundle.outputs, variants, spreadsFound(context.computed))),
    ...files,
    ...standing,
    ...tables.map(csvFile),
    ...(inputs.blindKey === null ? [] : [{ path: 'blind-key.txt', mediaType: 'text/plain; charset=utf-8', content: inputs.blindKey }]),
    dataPackageFile(inputs, tables),
  ];
}

type Erratum = EditionDocument['erratum'];

/** Documents that say nothing of an erratum. */
const standingFiles = (inputs: ReleaseInputs, context: EditionContext, compared: readonly ReleaseContext[]): ReleaseFile[] => [
  ...compared.flatMap(filesBesideTables),
  jsonFile('documents/claims.json', claimsDocument(context)),
  jsonFile('documents/round-robins.json', roundRobinsDocument(inputs)),
  jsonFile('documents/retests.json', retestsDocument(inputs)),
  jsonFile('documents/withdrawn.json', withdrawnDocument(inputs)),
  jsonFile('documents/rigs.json', rigsDocument(context)),
  ...statementFiles(inputs),
  jsonFile('documents/catalogue.json', catalogueDocument(context)),
  ...methodDocuments(context).map((document) => jsonFile(`documents/methods/${document.slug}-${document.number}.json`, document)),
];

interface ToTell {
  readonly erratum: Erratum;
  /** Cells that an erratum changed, this one or one before. */
  readonly cells: ReadonlySet<string>;
  readonly several: ReleaseInputs['evidence']['edition']['divisions'];
}

/** Documents that tell of the erratum, or of cells that one changed. */
function filesWithErratum(
  context: EditionContext,
  compared: readonly ReleaseContext[],
  uncorrected: readonly Tables[],
  { erratum, cells, several }: ToTell,
) {
  const divisions = uncorrected.map(({ edition, categories }) => ({ edition: { ...edition, erratum }, categories }));
  const variants = inOrderOf(
    context.variants,
    compared.flatMap((one, i) => (divisions[i] ? variantDocuments(one, divisions[i].edition, divisions[i].categories, cells) : [])),
  );
  const files = [
    ...(several ? [jsonFile('documents/edition.json', editionOfDivisions(context, several, erratum))] : []),
    ...compared.flatMap((one, i) => (divisions[i] ? tableFiles(one, divisions[i]) : [])),
    ...variants.map((document) => jsonFile(`documents/variants/${document.variant.slug}.json`, document)),
  ];
  return { divisions, variants, files };
}

const documentsIn = (files: readonly ReleaseFile[]) =>
  files.map(({ path, content }) => ({ path, document: JSON.parse(content) as object }));

/** The tables of what is compared: at the top of the documents where there is one, else in a folder of the division. */
function tableFiles(context: ReleaseContext, { edition, categories }: Tables): ReleaseFile[] {
  const folder = folderOf(context);
  return [
    jsonFile(`${folder}/edition.json`, edition),
    ...categories.map((document) => jsonFile(`${folder}/standings/${document.category.code}.json`, document)),
  ];
}

const filesBesideTables = (context: ReleaseContext): ReleaseFile[] => [
  jsonFile(`${folderOf(context)}/records.json`, recordsDocument(context)),
  jsonFile(`${folderOf(context)}/pairs.json`, pairsDocument(context)),
  jsonFile(`${folderOf(context)}/${SENSITIVITY}`, sensitivityDocument(context)),
];

const folderOf = ({ division }: ReleaseContext): string => (division ? `documents/divisions/${division.slug}` : 'documents');

function inOrderOf(names: readonly VariantName[], documents: readonly VariantDocument[]): VariantDocument[] {
  const bySlug = new Map(documents.map((document) => [document.variant.slug, document]));
  return names.flatMap(({ slug }) => bySlug.get(slug) ?? []);
}
