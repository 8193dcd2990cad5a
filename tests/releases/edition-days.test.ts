import type { EditionDocument } from '../../api/contract/documents/release-documents.js';
import { editionDocumentSchema } from '../../api/contract/documents/release-documents.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import type { ComparedEvidence } from '../../api/reckoning/evidence/edition-evidence.js';
import { inventInputs } from '../support/invent-inputs.js';

const inputs = inventInputs(2);
const { opensOn, closesOn } = inputs.evidence.edition;

function documentsWith(change: Partial<ComparedEvidence['edition']>) {
  const evidence = { ...inputs.evidence, edition: { ...inputs.evidence.edition, ...change } };
  return computeRelease({ ...inputs, evidence })
    .filter(({ path }) => path.startsWith('documents/'))
    .map(({ path, content }) => ({ path, document: JSON.parse(content) as Partial<EditionDocument> }));
}
const editionWith = (change: Partial<ComparedEvidence['edition']>) =>
  editionDocumentSchema.parse(documentsWith(change).find(({ path }) => path === 'documents/edition.json')!.document);

test('every document says the day on which the edition was closed, not the planned one', () => {
  const days = new Set(documentsWith({ closedOn: '2031-04-01' }).flatMap(({ document }) => document.edition?.closedOn ?? []));
  expect([...days]).toEqual(['2031-04-01']);
});

test('one from before that was kept says the planned day, and has no amendments', () => {
  const { edition, ...document } = editionWith({});
  expect(edition).toMatchObject({ openedOn: opensOn, closedOn: closesOn });
  expect(document).not.toHaveProperty('amendments');
});

test('what an open edition took besides is published with the reason', () => {
  const amendments = [
    { on: '2031-03-01', reason: 'Bought late.', variants: ['late-one'], methods: [{ slug: 'diameter', number: 1 }], closesOn: null },
    { on: '2031-03-02', reason: 'A rig was down.', variants: [], methods: [], closesOn: { before: closesOn, after: '2031-04-30' } },
  ];
  expect(editionWith({ amendments }).amendments).toEqual(amendments);
});
