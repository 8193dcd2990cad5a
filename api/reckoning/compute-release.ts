import { bundleOf } from './documents/bundle.js';
import { catalogueDocument, methodDocuments } from './documents/catalogue-documents.js';
import { categoryDocuments } from './documents/category-document.js';
import { claimsDocument } from './documents/claims-document.js';
import { editionDocument } from './documents/edition-document.js';
import { pairsDocument } from './documents/pairs-document.js';
import { retestsDocument } from './documents/retests-document.js';
import { rigsDocument } from './documents/rigs-document.js';
import { roundRobinsDocument } from './documents/round-robins-document.js';
import { contextOf } from './documents/release-context.js';
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
  const categories = categoryDocuments(context);
  const uncorrected = editionDocument(context, null);
  const claims = claimsDocument(context);
  const erratum = inputs.correction && computeErratum(inputs.correction, { edition: uncorrected, categories, claims });
  const edition = { ...uncorrected, erratum };
  const corrected = new Set([...(inputs.correction?.corrected ?? []), ...(erratum?.changes ?? []).map(({ where }) => where)]);
  const variants = variantDocuments(context, edition, categories, corrected);
  const tables = [...catalogueTables(variants), ...standingsTables(edition, categories), ...evidenceTables(variants)];
  return [
    readmeFile(inputs),
    jsonFile('bundle.json', bundleOf(inputs, context, edition, categories)),
    jsonFile('documents/edition.json', edition),
    ...categories.map((document) => jsonFile(`documents/standings/${document.category.code}.json`, document)),
    ...variants.map((document) => jsonFile(`documents/variants/${document.variant.slug}.json`, document)),
    jsonFile('documents/records.json', recordsDocument(context)),
    jsonFile('documents/pairs.json', pairsDocument(context)),
    jsonFile('documents/claims.json', claims),
    jsonFile('documents/round-robins.json', roundRobinsDocument(inputs)),
    jsonFile('documents/retests.json', retestsDocument(inputs)),
    jsonFile('documents/withdrawn.json', withdrawnDocument(inputs)),
    jsonFile('documents/rigs.json', rigsDocument(context)),
    jsonFile('documents/catalogue.json', catalogueDocument(context)),
    ...methodDocuments(context).map((document) => jsonFile(`documents/methods/${document.slug}-${document.number}.json`, document)),
    ...tables.map(csvFile),
    ...(inputs.blindKey === null ? [] : [{ path: 'blind-key.txt', mediaType: 'text/plain; charset=utf-8', content: inputs.blindKey }]),
    dataPackageFile(inputs, tables),
  ];
}
