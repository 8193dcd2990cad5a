import { useContext } from 'preact/hooks';
import type { z } from 'zod';
import type { previewResponse } from '../../../../api/contract/endpoints/previews.js';
import type { ReleaseRequest } from '../../../../api/contract/endpoints/releases.js';
import { dayOf, timeOf } from '../words/day-of.js';
import { NameOf } from '../parts/variant-names.js';

interface Props {
  readonly preview: z.infer<typeof previewResponse>;
  readonly request: ReleaseRequest;
  readonly onPublish: () => void;
  readonly onBack: () => void;
}

/** What will stand there for ever, before it does. */
export function ReleaseSummary({ preview: { overall, incomplete, excluded, published }, request, onPublish, onBack }: Props) {
  const nameOf = useContext(NameOf);
  const first = overall.filter(({ place }) => place === 1).map(({ variant }) => nameOf(variant));
  const { publishAt, erratum } = request;
  const facts = {
    'Readers see it': publishAt === null ? 'as soon as it is written' : `from ${dayOf(publishAt)}, ${timeOf(new Date(publishAt))}`,
    Placed: `${overall.filter(({ place }) => place !== null).length} entries`,
    First: first.join(', ') || 'nobody',
    'Without a place': incomplete.map(({ variant }) => nameOf(variant)).join(', ') || 'none',
    'Left out': excluded.map(nameOf).join(', ') || 'none',
    ...(erratum && {
      Changes: `${published?.changes.length ?? 0} cells against revision ${published?.revision ?? ''}`,
      Told: erratum.words,
    }),
  };
  return (
    <>
      <p>What is published stays for ever, and carries the names of those who tested and reviewed.</p>
      <dl class="context">
        {Object.entries(facts).map(([term, value]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <p class="acts">
        <button type="button" class="main" onClick={onPublish}>
          Yes, publish
        </button>
        <button type="button" onClick={onBack}>
          Not yet
        </button>
      </p>
    </>
  );
}
