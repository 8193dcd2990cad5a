import type { VariantDocument, VariantName } from '../contract/documents/release-documents.js';
import { cellsOf } from './cells.js';
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
import type { ReleaseContext } from './documents/release-context.js';
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
import { standingsTables } from './tables/standings-tables.js';

/** Computes every file of a release from its inputs. Pure: the same inputs give the same bytes. */
export function computeRelease(inputs: ReleaseInputs): ReleaseFile[] {
  const context = contextOf(inputs);
  const claims = claimsDocument(context);
  const compared = compare(context);
  const uncorrected = compared.map((one) => ({ edition: editionDocument(one, null), categories: categoryDocuments(one) }));
  const shown = { tables: uncorrected, claims, house: houseDocument(inputs), remarks: remarksDocument(inputs) };
  const erratum = inputs.correction && computeErratum(inputs.correction, cellsOf(shown));
  const divisions = uncorrected.map(({ edition, categories }) => ({ edition: { ...edition, erratum }, categories }));
  const corrected = new Set([...(inputs.correction?.corrected ?? []), ...(erratum?.changes ?? []).map(({ where }) => where)]);
  const variants = inOrderOf(
    context.variants,
    compared.flatMap((one, i) => (divisions[i] ? variantDocuments(one, divisions[i].edition, divisions[i].categories, corrected) : [])),
  );
  const tables = [...catalogueTables(variants), ...standingsTables(divisions), ...evidenceTables(variants)];
  const several = inputs.evidence.edition.divisions;
  const bundle = bundleOf(inputs, context, divisions);
  return [
    readmeFile(inputs),
    jsonFile('bundle.json', bundle),
    jsonFile(RETOLD, retoldOf(bundle.outputs, variants)),
    ...(several ? [jsonFile('documents/edition.json', editionOfDivisions(context, several, erratum))] : []),
    ...compared.flatMap((one, i) => (divisions[i] ? filesOf(one, divisions[i]) : [])),
    ...variants.map((document) => jsonFile(`documents/variants/${document.variant.slug}.json`, document)),
    jsonFile('documents/claims.json', claims),
    jsonFile('documents/round-robins.json', roundRobinsDocument(inputs)),
    jsonFile('documents/retests.json', retestsDocument(inputs)),
    jsonFile('documents/withdrawn.json', withdrawnDocument(inputs)),
    jsonFile('documents/rigs.json', rigsDocument(context)),
    ...statementFiles(inputs),
    jsonFile('documents/catalogue.json', catalogueDocument(context)),
    ...methodDocuments(context).map((document) => jsonFile(`documents/methods/${document.slug}-${document.number}.json`, document)),
    ...tables.map(csvFile),
    ...(inputs.blindKey === null ? [] : [{ path: 'blind-key.txt', mediaType: 'text/plain; charset=utf-8', content: inputs.blindKey }]),
    dataPackageFile(inputs, tables),
  ];
}

/** The tables of what is compared: at the top of the documents where there is one, else in a folder of the division. */
function filesOf(context: ReleaseContext, { edition, categories }: Tables): ReleaseFile[] {
  const folder = context.division ? `documents/divisions/${context.division.slug}` : 'documents';
  return [
    jsonFile(`${folder}/edition.json`, edition),
    ...categories.map((document) => jsonFile(`${folder}/standings/${document.category.code}.json`, document)),
    jsonFile(`${folder}/records.json`, recordsDocument(context)),
    jsonFile(`${folder}/pairs.json`, pairsDocument(context)),
    jsonFile(`${folder}/${SENSITIVITY}`, sensitivityDocument(context)),
  ];
}

function inOrderOf(names: readonly VariantName[], documents: readonly VariantDocument[]): VariantDocument[] {
  const bySlug = new Map(documents.map((document) => [document.variant.slug, document]));
  return names.flatMap(({ slug }) => bySlug.get(slug) ?? []);
}
