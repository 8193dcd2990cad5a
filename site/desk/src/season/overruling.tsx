import { useContext } from 'preact/hooks';
import { z } from 'zod';
import type { boardResponse } from '../../../../api/contract/endpoints/board.js';
import { overrulingRequest } from '../../../../api/contract/endpoints/editions.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { NameOf } from '../parts/variant-names.js';

interface Props {
  readonly slug: string;
  readonly divisions: readonly { readonly slug: string; readonly name: string }[];
  readonly entries: z.infer<typeof boardResponse>['entries'];
  readonly onChanged: () => void;
}

/** Putting an entry into a division whatever the rule says, with the reason that readers see. */
export function Overruling({ slug, divisions, entries, onChanged }: Props) {
  const nameOf = useContext(NameOf);
  const overruled = entries.filter((entry) => entry.overruled !== undefined);
  const follow = (variant: string) => void ask(z.unknown(), 'DELETE', `editions/${slug}/overrulings/${variant}`).then(onChanged);
  return (
    <details>
      <summary>Put an entry into another division ({overruled.length} are)</summary>
      <ul class="rows">
        {overruled.map(({ variant, division, overruled: reason }) => (
          <li key={variant}>
            <p>
              {nameOf(variant)}, {nameOf(division ?? '')}: {reason}
            </p>
            <button type="button" onClick={() => follow(variant)}>
              Let the rule decide on {nameOf(variant)}
            </button>
          </li>
        ))}
      </ul>
      <Form
        schema={overrulingRequest}
        submit="Put it there"
        keptAs={`overruling ${slug}`}
        isRepeated
        fields={[
          {
            name: 'variant',
            label: 'Entry',
            kind: 'choice',
            options: entries.map(
              ({ variant, division }) =>
                [variant, `${nameOf(variant)}: ${division === undefined ? 'in no division' : nameOf(division)}`] as const,
            ),
          },
          { name: 'division', label: 'Division', kind: 'choice', options: divisions.map((one) => [one.slug, one.name] as const) },
          { name: 'reason', label: 'Why, in words that readers see', kind: 'words' },
        ]}
        onSend={async (request) => {
          await ask(z.unknown(), 'POST', `editions/${slug}/overrulings`, { body: request });
          onChanged();
          return `${nameOf(request.variant)} is in ${nameOf(request.division)}.`;
        }}
      />
    </details>
  );
}
