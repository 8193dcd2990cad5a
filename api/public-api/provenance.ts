import type { z } from 'zod';
import type { PublishedRelease } from '../releases/releases.read-model.js';
import type { provenanceResponse } from '../contract/documents/provenance.js';
import type { PublishedSubmission, VariantDocument } from '../contract/documents/release-documents.js';
import type { RigsDocument } from '../contract/documents/rigs-document.js';

export type Provenance = z.infer<typeof provenanceResponse>;

/** The chain behind each published figure of a variant, from the documents of its release alone. Pure. */
export function provenanceOf(
  release: Pick<PublishedRelease, 'edition' | 'revision' | 'digest'>,
  document: VariantDocument,
  instruments: RigsDocument['instruments'],
  quantity: string | undefined,
): Provenance {
  const { edition, revision, digest } = release;
  const address = `/v1/releases/${edition}/${revision}`;
  const figureOf = (wanted: string) =>
    document.categories.find(({ category }) => category.quantity === wanted)?.row.figure ??
    document.figures.find((figure) => figure.quantity === wanted) ??
    null;
  return {
    release: {
      edition,
      revision,
      digest,
      manifest: `${address}/manifest.json`,
      document: `${address}/documents/variants/${document.variant.slug}.json`,
    },
    variant: document.variant.slug,
    figures: (document.evidence ?? [])
      .filter((one) => quantity === undefined || one.quantity === quantity)
      .map((one) => ({
        quantity: one.quantity,
        figure: figureOf(one.quantity),
        submissions: document.submissions
          .filter(({ reference }) => one.submissions.includes(reference))
          .map((submission) => linkOf(submission, instruments)),
      })),
  };
}

/** One submission with its specimens, and each instrument with the certificate that was valid on the day. */
const linkOf = (
  submission: PublishedSubmission,
  instruments: RigsDocument['instruments'],
): Provenance['figures'][number]['submissions'][number] => ({
  ...submission,
  instruments: submission.instruments.map(({ code, calibration }) => {
    const instrument = instruments.find((one) => one.code === code);
    return {
      code,
      name: instrument?.name ?? null,
      kind: instrument?.kind ?? null,
      calibration: instrument?.calibrations.find(({ certificate }) => certificate === calibration) ?? null,
    };
  }),
});
