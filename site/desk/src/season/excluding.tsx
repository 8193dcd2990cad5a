import { useState } from 'preact/hooks';
import { z } from 'zod';
import type { boardResponse } from '../../../../api/contract/endpoints/board.js';
import { exclusionRequest, type ExclusionRequest } from '../../../../api/contract/endpoints/editions.js';
import { exclusionPreviewResponse } from '../../../../api/contract/endpoints/previews.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { useAct } from '../parts/use-act.js';
import { ChangedCells } from './changed-cells.js';

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

type Effect = z.infer<typeof exclusionPreviewResponse>;

/** Leaving an entry out, with the reason that readers see; what it would change is told before anybody decides. */
export function Excluding({ slug, entries, onChanged }: Props) {
  const [asked, setAsked] = useState<{ readonly request: ExclusionRequest; readonly effect: Effect } | null>(null);
  const [isAtWork, setIsAtWork] = useState(false);
  const { said, act } = useAct(onChanged);
  const excluded = entries.filter(({ exclusion }) => exclusion !== null);
  const open = entries.filter(({ exclusion }) => exclusion === null);
  const takeBack = (variant: string) =>
    act(() => ask(z.unknown(), 'DELETE', `editions/${slug}/exclusions/${variant}`), `${variant} is in again.`);
  const leaveOut = (request: ExclusionRequest) => {
    setAsked(null);
    act(
      () => ask(z.unknown(), 'POST', `editions/${slug}/exclusions`, { body: request }),
      `${request.variant} is left out. Until the edition is published it can be taken back in above.`,
    );
  };
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
      <p role="status">{said}</p>
      <Form
        schema={exclusionRequest}
        submit="See what that would change"
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
          setAsked(null);
          setIsAtWork(true);
          try {
            const effect = await ask(exclusionPreviewResponse, 'POST', `editions/${slug}/exclusions/preview`, { body: request });
            setAsked({ request, effect });
          } finally {
            setIsAtWork(false);
          }
          return 'Nothing is changed yet.';
        }}
      />
      <p role="status">{isAtWork && 'Both standings are being worked out …'}</p>
      {asked && (
        <section aria-label={`What leaving ${asked.request.variant} out would change`}>
          <ChangedCells changes={asked.effect.changes} />
          <p class="acts">
            <button type="button" class="main" onClick={() => leaveOut(asked.request)}>
              Leave {asked.request.variant} out
            </button>
            <button type="button" onClick={() => setAsked(null)}>
              Leave it in
            </button>
          </p>
        </section>
      )}
    </details>
  );
}
