import { useContext } from 'preact/hooks';
import type { z } from 'zod';
import { erratumSchema } from '../../../../api/contract/documents/release-documents.js';
import type { previewResponse } from '../../../../api/contract/endpoints/previews.js';
import { releaseRequest, type ReleaseRequest } from '../../../../api/contract/endpoints/releases.js';
import { Form } from '../parts/form.js';
import type { FieldOptions } from '../parts/field-options.js';
import { byDivision, GROUP_WORDS } from './changed-cells.js';
import { inNames, NameOf } from '../parts/variant-names.js';

type Preview = z.infer<typeof previewResponse>;
type Reason = z.infer<typeof erratumSchema>['reasonCode'];

interface Props {
  readonly preview: Preview;
  /** What is typed stays under it until the order is given. */
  readonly keptAs: string;
  readonly isFirst: boolean;
  readonly onAsked: (request: ReleaseRequest) => void;
}

const REASONS: Readonly<Record<Reason, string>> = {
  withdrawal: 'something was withdrawn',
  reidentification: 'a spool was another variant',
  methodError: 'a method was applied wrongly',
  catalogueError: 'the catalogue said something wrong',
};

const WHEN: FieldOptions = {
  name: 'publishAt',
  label: 'When readers see it',
  kind: 'moment',
  isOptional: true,
  hint: 'Empty: as soon as it is written.',
};

interface Cell {
  readonly where: string;
  readonly before: string;
}

function ticked(told: unknown, differences: readonly Cell[]): Cell[] {
  const sent = new Set((told as { expects: string[] }).expects);
  return differences.flatMap(({ where, before }) => (sent.has(`${where}: ${before}`) ? [{ where, before }] : []));
}

/** What a release is asked for with; a correction names the cells that it is about by ticking what differs from the published ones. */
export function ReleaseForm({ preview, keptAs, isFirst, onAsked }: Props) {
  const nameOf = useContext(NameOf);
  const differences = byDivision(preview.published?.changes ?? [], nameOf).flatMap(([division, changes]) =>
    changes.flatMap(({ before, ...change }) => (before === null ? [] : [{ division, before, ...change }])),
  );
  if (!isFirst && differences.length === 0)
    return <p class="soft">Nothing that readers see differs from what is on record; there is nothing to correct.</p>;
  const erratum: readonly FieldOptions[] = [
    {
      name: 'erratum/expects',
      label: 'What the correction is about',
      kind: 'several',
      options: differences.map(
        ({ division, about, where, before, after }) =>
          [
            `${where}: ${before}`,
            `${inNames(where, nameOf)}: ${before} → ${after ?? 'nothing'}`,
            [division, GROUP_WORDS[about]].filter(Boolean).join(', '),
          ] as const,
      ),
    },
    {
      name: 'erratum/reasonCode',
      label: 'Because',
      kind: 'choice',
      options: erratumSchema.shape.reasonCode.options.map((code) => [code, REASONS[code]] as const),
    },
    { name: 'erratum/words', label: 'What changed and why, for readers', kind: 'words' },
  ];
  return (
    <>
      <p>
        {isFirst
          ? 'Look at the standings once more. What is published stays for ever: a later correction is a new revision with an erratum.'
          : 'The new revision stands beside the old one. Tick what the correction is about, at least one cell: where readers no longer see that there, nothing is published. The erratum tells every cell that changes, ticked or not.'}
      </p>
      <Form
        schema={releaseRequest}
        submit={isFirst ? 'Publish' : 'Publish the correction'}
        keptAs={keptAs}
        fields={isFirst ? [WHEN] : [...erratum, WHEN]}
        prepare={({ publishAt, erratum: told }) => ({
          publishAt: typeof publishAt === 'string' ? new Date(publishAt).toISOString() : null,
          erratum: isFirst
            ? null
            : {
                ...(told as object),
                expects: ticked(told, differences),
              },
        })}
        onSend={(request) => {
          onAsked(request);
          return Promise.resolve(null);
        }}
      />
    </>
  );
}
