import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  catalogueDocumentSchema,
  categoryDocumentSchema,
  editionDocumentSchema,
  manifestSchema,
  methodDocumentSchema,
  releaseSummarySchema,
  variantDocumentSchema,
} from '../../api/contract/documents/release-documents.js';
import { claimsDocumentSchema } from '../../api/contract/documents/claims-document.js';
import { retestsDocumentSchema } from '../../api/contract/documents/retests-document.js';
import { roundRobinsDocumentSchema } from '../../api/contract/documents/round-robins-document.js';
import { rigsDocumentSchema } from '../../api/contract/documents/rigs-document.js';
import { makeReleases } from '../support/make-release.js';

// The pages are built and measured with invented releases; these must be as the schemas say, or the measurements would mean nothing.
const schemaOf = (path: string) => {
  if (path === 'documents/edition.json') return editionDocumentSchema;
  if (path === 'documents/catalogue.json') return catalogueDocumentSchema;
  if (path.startsWith('documents/standings/')) return categoryDocumentSchema;
  if (path.startsWith('documents/variants/')) return variantDocumentSchema;
  if (path === 'documents/rigs.json') return rigsDocumentSchema;
  if (path === 'documents/round-robins.json') return roundRobinsDocumentSchema;
  if (path === 'documents/retests.json') return retestsDocumentSchema;
  if (path === 'documents/claims.json') return claimsDocumentSchema;
  return path.startsWith('documents/methods/') ? methodDocumentSchema : null;
};

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'releases-'));
});
afterAll(() => rm(folder, { recursive: true }));

test('every document of an invented release is of the published format, and the same each time', async () => {
  const summaries = await makeReleases(folder, { editions: 3, variants: 15 });
  expect(summaries.map(({ edition, revision, status }) => `${edition}/${revision} ${status}`)).toEqual([
    '2026/1 published',
    '2025/2 published',
    '2025/1 superseded',
    '2024/1 published',
  ]);
  let checked = 0;
  for (const summary of summaries) {
    releaseSummarySchema.parse(summary);
    const at = join(folder, 'v1/releases', summary.edition, String(summary.revision));
    const manifest = manifestSchema.parse(JSON.parse(await readFile(join(at, 'manifest.json'), 'utf8')));
    for (const { path } of manifest.files) {
      const schema = schemaOf(path);
      if (!schema) continue;
      schema.parse(JSON.parse(await readFile(join(at, path), 'utf8')));
      checked += 1;
    }
  }
  expect(checked).toBeGreaterThan(80);
  expect(await makeReleases(folder, { editions: 3, variants: 15 })).toEqual(summaries);
});
