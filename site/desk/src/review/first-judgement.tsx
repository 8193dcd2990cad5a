import type { z } from 'zod';
import { earlierResultsResponse, judgementRequest } from '../../../../api/contract/endpoints/reviews.js';
import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { ask } from '../http/ask.js';
import { Refusal } from '../http/problem.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';

interface Props {
  readonly submission: SubmissionResponse;
  readonly canDecide: boolean;
  readonly onJudged: () => void;
  readonly onFault: (error: unknown) => void;
}
type Earlier = z.infer<typeof earlierResultsResponse>['items'];

/** What one thinks of the readings by themselves comes first; only then what others found. */
export function FirstJudgement({ submission: { reference, version }, canDecide, onJudged, onFault }: Props) {
  const earlier = useLoaded(async () => {
    try {
      return { items: (await ask(earlierResultsResponse, 'GET', `submissions/${reference}/earlier-results`)).items };
    } catch (error) {
      if (error instanceof Refusal && error.status !== 404) return { items: null };
      throw error;
    }
  }, [reference]);
  if (!earlier.answer) return <Loading of={earlier} />;
  if (earlier.answer.items !== null) return <EarlierResults items={earlier.answer.items} />;
  if (!canDecide) return <p class="soft">Earlier results are shown to the reviewer after a first judgement.</p>;
  return (
    <>
      <p>What others found of the same line stays hidden until you have said what you think of these readings by themselves.</p>
      <Form
        schema={judgementRequest}
        submit="Say so, and show earlier results"
        keptAs={`judgement ${reference}`}
        fields={[
          {
            name: 'verdict',
            label: 'By themselves the readings are',
            kind: 'choice',
            options: [
              ['plausible', 'plausible'],
              ['doubtful', 'doubtful'],
            ],
          },
          { name: 'words', label: 'Because', kind: 'words' },
        ]}
        onSend={async (judgement) => {
          try {
            await ask(earlierResultsResponse, 'POST', `submissions/${reference}/judgements`, { body: judgement, version });
          } catch (error) {
            onFault(error);
            throw error;
          }
          earlier.again();
          onJudged();
          return 'On record.';
        }}
      />
    </>
  );
}

function EarlierResults({ items }: { items: Earlier }) {
  if (items.length === 0) return <p>Nobody has an accepted result of this variant by this method yet.</p>;
  return (
    <ul class="rows">
      {items.map(({ reference, benchDay, tester, instruments, figures }) => (
        <li key={reference}>
          <p>
            {forceOf(figures)}
            <br />
            <span class="soft">
              {reference}, {tester} on {instruments.join(' ')}, {dayOf(benchDay)}
            </span>
          </p>
        </li>
      ))}
    </ul>
  );
}

interface Force {
  readonly n: number;
  readonly mean: number;
  readonly cvPercent: number | null;
}

function forceOf(figures: Record<string, unknown>): string {
  const force = figures['breakingForceN'] as Force | null | undefined;
  if (!force) return `${String(figures['validSpecimens'])} valid specimens`;
  return `${force.mean.toFixed(1)} N, mean of ${force.n}${force.cvPercent === null ? '' : `, spread ${force.cvPercent.toFixed(1)} %`}`;
}
