import { z } from 'zod';
import type { boardResponse } from '../../../../api/contract/endpoints/board.js';
import { exclusionRequest } from '../../../../api/contract/endpoints/editions.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';

interface Props {
  readonly slug: string;
  readonly entries: z.infer<typeof boardResponse>['entries'];
  readonly onChanged: () => void;
}

const REASONS = [
  ['notObtainable', 'cannot be bought'],
  ['labelInDoubt', 'its label is in doubt'],
  ['duplicate', 'is another entry once more'],
  ['makersRequestRefused', 'its maker asked, and was refused'],
  ['interest', 'a tie of somebody who tests'],
] as const;

/** Leaving an entry out, with the reason that readers see. */
export function Excluding({ slug, entries, onChanged }: Props) {
  const excluded = entries.filter(({ exclusion }) => exclusion !== null);
  const open = entries.filter(({ exclusion }) => exclusion === null);
  const takeBack = (variant: string) => void ask(z.unknown(), 'DELETE', `editions/${slug}/exclusions/${variant}`).then(onChanged);
  return (
    <details>
      <summary>Leave an entry out ({excluded.length} are)</summary>
      <ul class="rows">
        {excluded.map(({ variant, exclusion }) => (
          <li key={variant}>
            <p>
              {variant}: {exclusion?.words}
            </p>
            <button type="button" onClick={() => takeBack(variant)}>
              Take {variant} back in
            </button>
          </li>
        ))}
      </ul>
      <Form
        schema={exclusionRequest}
        submit="Leave it out"
        isRepeated
        fields={[
          { name: 'variant', label: 'Entry', kind: 'choice', options: open.map(({ variant }) => [variant, variant] as const) },
          { name: 'reasonCode', label: 'Because it', kind: 'choice', options: REASONS },
          {
            name: 'effect',
            label: 'The others',
            kind: 'choice',
            options: [
              ['shownUnplaced', 'keep their places; it is shown without one'],
              ['closedUp', 'move up'],
            ],
          },
          { name: 'words', label: 'Why, in words that readers see', kind: 'words' },
        ]}
        onSend={async (request) => {
          await ask(z.unknown(), 'POST', `editions/${slug}/exclusions`, { body: request });
          onChanged();
          return `${request.variant} is left out. Look at the standings to see what that does.`;
        }}
      />
    </details>
  );
}
