import { claimsDocumentSchema } from '../../api/contract/documents/claims-document.js';
import { categoryDocumentSchema, editionDocumentSchema, editionFileSchema } from '../../api/contract/documents/release-documents.js';
import { cellsOf, contentCell, withContents } from '../../api/reckoning/cells.js';
import type { RevisionCells } from '../../api/reckoning/release-inputs.js';

/** What readers see of a release, from its files by path. */
export function cellsOfFiles(files: ReadonlyMap<string, string>): RevisionCells {
  const documents = [...files].flatMap(([path, content]) =>
    path.startsWith('documents/') ? [{ path, document: JSON.parse(content) as object }] : [],
  );
  const read = (path: string) => documents.find((one) => one.path === path)?.document;
  const edition = editionFileSchema.parse(read('documents/edition.json'));
  const folders = 'divisions' in edition ? edition.divisions.map(({ slug }) => `documents/divisions/${slug}`) : ['documents'];
  const tables = folders.map((folder) => ({
    edition: editionDocumentSchema.parse(read(`${folder}/edition.json`)),
    categories: documents
      .filter(({ path }) => path.startsWith(`${folder}/standings/`))
      .map(({ document }) => categoryDocumentSchema.parse(document)),
  }));
  const shown = cellsOf({ tables, claims: claimsDocumentSchema.parse(read('documents/claims.json')) });
  return withContents(
    shown,
    documents.map(({ path, document }) => contentCell(path, document)),
  );
}
