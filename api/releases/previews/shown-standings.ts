import type { RevisionCells, ReleaseInputs } from '../../reckoning/release-inputs.js';
import { cellsOf } from '../../reckoning/cells.js';
import { categoryDocuments } from '../../reckoning/documents/category-document.js';
import { claimsDocument } from '../../reckoning/documents/claims-document.js';
import { compare } from '../../reckoning/documents/compare.js';
import { editionDocument } from '../../reckoning/documents/edition-document.js';
import { contextOf } from '../../reckoning/documents/release-context.js';
import { houseDocument, remarksDocument } from '../../reckoning/documents/statement-documents.js';

/** The standings that a release of these inputs would show, and each of their cells; nothing is stored. */
export function shownStandings(inputs: ReleaseInputs) {
  const context = contextOf(inputs);
  const tables = compare(context).map((one) => ({
    context: one,
    edition: editionDocument(one, null),
    categories: categoryDocuments(one),
  }));
  const shown: RevisionCells = cellsOf({
    tables,
    claims: claimsDocument(context),
    house: houseDocument(context),
    remarks: remarksDocument(context),
  });
  return { tables, shown };
}
