import { useContext } from 'preact/hooks';
import type { z } from 'zod';
import type { previewResponse } from '../../../../api/contract/endpoints/previews.js';
import type { ReleaseRequest } from '../../../../api/contract/endpoints/releases.js';
import { dayOf, timeOf } from '../words/day-of.js';
import { byDivision } from './changed-cells.js';
import { NameOf } from '../parts/variant-names.js';

interface Props {
  readonly preview: z.infer<typeof previewResponse>;
  readonly request: ReleaseRequest;
  readonly onPublish: () => void;
  readonly onBack: () => void;
}

type Tables = Pick<Props['preview'], 'overall' | 'incomplete' | 'excluded'>;

const slugsOf = <Row extends { readonly variant: string }>(rows: readonly Row[], which: (row: Row) => boolean = () => true): string[] =>
  rows.filter(which).map(({ variant }) => variant);

/** What will stand there for ever, before it does. */
export function ReleaseSummary({ preview: { published, divisions, ...whole }, request, onPublish, onBack }: Props) {
  const nameOf = useContext(NameOf);
  const { publishAt, erratum } = request;
  /** What is said of each division, with its name; of an edition with one without. */
  const ofEach = (said: (tables: Tables) => string): string =>
    divisions ? divisions.map((tables) => `${nameOf(tables.division)}: ${said(tables)}`).join('; ') : said(whole);
  const named = (slugs: readonly string[], none = 'none'): string => slugs.map(nameOf).join(', ') || none;
  const changed = byDivision(published?.changes ?? [], nameOf).map(([division, cells]) => `${division} ${cells.length}`.trim());
  const facts = {
    'Readers see it': publishAt === null ? 'as soon as it is written' : `from ${dayOf(publishAt)}, ${timeOf(new Date(publishAt))}`,
    Placed: ofEach(({ overall }) => `${slugsOf(overall, ({ place }) => place !== null).length} entries`),
    First: ofEach(({ overall }) =>
      named(
        slugsOf(overall, ({ place }) => place === 1),
        'nobody',
      ),
    ),
    'Without a place': ofEach(({ incomplete }) => named(slugsOf(incomplete))),
    'Left out': ofEach(({ excluded }) => named(excluded)),
    ...(erratum && {
      Changes: `${changed.join(', ') || 0} cells against revision ${published?.revision ?? ''}`,
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
