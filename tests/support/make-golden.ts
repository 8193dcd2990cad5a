/**
 * `node --import ./.config/load-typescript.mjs tests/support/make-golden.ts <folder>`: three releases that are kept as written, a
 * first, its correction, and the year after, which is divided. Made anew only for a new format, in a folder of its own.
 */
import { join } from 'node:path';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import { tablesIn } from '../../api/reckoning/documents/bundle.js';
import type { Bundle } from '../../api/reckoning/documents/bundle.js';
import { cellsOf } from '../../api/reckoning/cells.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import { earlierEdition } from './earlier-edition.js';
import { inventInputs } from './invent-inputs.js';
import { withTwoKnots } from './with-two-knots.js';
import { writeRelease } from './write-release.js';

const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error('Name the folder that the releases go into.');

const first = withTwoKnots(inventInputs(5, { variants: 5, testers: 3, rigs: 2, specimens: 5 }));
const firstDigest = sha256(await writeRelease(join(folder, '2026-1'), first));
const { outputs } = JSON.parse(computeRelease(first).find(({ path }) => path === 'bundle.json')!.content) as Bundle;
const tables = tablesIn(outputs);
const [best] = tables[0]!.edition.overall;
const [withdrawn, ...kept] = first.evidence.submissions;

const corrected: ReleaseInputs = {
  ...first,
  revision: 2,
  publishedAt: '2026-04-01T09:00:00.000Z',
  previousDigest: firstDigest,
  evidence: {
    ...first.evidence,
    submissions: kept,
    withdrawn: [
      {
        reference: withdrawn!.reference,
        variant: withdrawn!.variant,
        method: withdrawn!.method.slug,
        tester: withdrawn!.tester,
        benchDay: withdrawn!.benchDay,
        withdrawnOn: '2026-03-20',
        reason: 'The spool had lain in the sun.',
      },
    ],
  },
  correction: {
    reasonCode: 'withdrawal',
    words: 'One straight pull was of a spool that had lain in the sun.',
    expects: [{ where: `overall, ${best!.variant.slug}, place`, before: String(best!.place) }],
    before: cellsOf({ tables }),
    corrected: [],
  },
};
const correctedDigest = sha256(await writeRelease(join(folder, '2026-2'), corrected));

const { scheme, ...edition } = first.evidence.edition;
const slugs = first.variants.map(({ slug }) => slug);
const takes = { materials: [], constructions: [] };
await writeRelease(join(folder, '2027-1'), {
  ...first,
  publishedAt: '2027-03-01T09:00:00.000Z',
  previousDigest: correctedDigest,
  evidence: {
    ...first.evidence,
    edition: {
      ...edition,
      slug: '2027',
      name: 'Winter 2027',
      opensOn: '2026-10-01',
      closesOn: '2027-02-15',
      previous: '2026',
      divisions: [
        { slug: 'braided', name: 'Braided', takes, scheme, variants: slugs.slice(0, 3), overruled: [] },
        {
          slug: 'solid',
          name: 'Solid',
          takes,
          scheme,
          variants: slugs.slice(3),
          overruled: [{ variant: slugs.at(-1)!, reason: 'Sold as braid, and made of one strand.' }],
        },
      ],
    },
  },
  earlier: [earlierEdition(computeRelease(corrected), correctedDigest)],
});
