import { useContext, useState } from 'preact/hooks';
import { z } from 'zod';
import type { boardResponse } from '../../../../api/contract/endpoints/board.js';
import { exclusionRequest, type ExclusionRequest } from '../../../../api/contract/endpoints/editions.js';
import { exclusionPreviewResponse } from '../../../../api/contract/endpoints/previews.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { useForgetForm } from '../parts/use-typed.js';
import { useAct } from '../parts/use-act.js';
import { ChangedCells } from './changed-cells.js';
import { NameOf } from '../parts/variant-names.js';

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
  const nameOf = useContext(NameOf);
  const [asked, setAsked] = useState<{ readonly request: ExclusionRequest; readonly effect: Effect } | null>(null);
  const [isAtWork, setIsAtWork] = useState(false);
  const { said, act } = useAct(onChanged);
  const keptAs = `exclusion ${slug}`;
  const forget = useForgetForm(keptAs);
  const excluded = entries.filter(({ exclusion }) => exclusion !== null);
  const open = entries.filter(({ exclusion }) => exclusion === null);
  const takeBack = (variant: string) =>
    act(() => ask(z.unknown(), 'DELETE', `editions/${slug}/exclusions/${variant}`), `${nameOf(variant)} is in again.`);
  const leaveOut = (request: ExclusionRequest) => {
    setAsked(null);
    act(
      async () => {
        await ask(z.unknown(), 'POST', `editions/${slug}/exclusions`, { body: request });
        forget();
      },
      `${nameOf(request.variant)} is left out. Until the edition is published it can be taken back in above.`,
    );
  };
  return (
    <details>
      <summary>Leave an entry out ({excluded.length} are)</summary>
      <ul class="rows">
        {excluded.map(({ variant, exclusion }) => (
          <li key={variant}>
            <p>
              {nameOf(variant)}: {exclusion?.words}
            </p>
            <button type="button" onClick={() => takeBack(variant)}>
              Take {nameOf(variant)} back in
            </button>
          </li>
        ))}
      </ul>
      <p role="status">{said}</p>
      <Form
        key={excluded.length}
        schema={exclusionRequest}
        submit="See what that would change"
        keptAs={keptAs}
        fields={[
          { name: 'variant', label: 'Entry', kind: 'choice', options: open.map(({ variant }) => [variant, nameOf(variant)] as const) },
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
          return null;
        }}
      />
      <p role="status">{isAtWork ? 'Both standings are being worked out …' : asked && 'Nothing is changed yet.'}</p>
      {asked && (
        <section aria-label={`What leaving ${nameOf(asked.request.variant)} out would change`}>
          <ChangedCells changes={asked.effect.changes} />
          <p class="acts">
            <button type="button" class="main" onClick={() => leaveOut(asked.request)}>
              Leave {nameOf(asked.request.variant)} out
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
