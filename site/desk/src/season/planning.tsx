import { useState } from 'preact/hooks';
import type { SchemeCategory } from '../../../../api/contract/endpoints/schemes.js';
import { planQuery, planResponse } from '../../../../api/contract/endpoints/planning.js';
import type { Plan } from '../../../../api/contract/endpoints/planning.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';

interface Props {
  readonly slug: string;
  readonly compared: readonly {
    readonly division: string | undefined;
    readonly name: string;
    readonly categories: readonly SchemeCategory[];
  }[];
}

const APART = '/';

const MORE: Readonly<Record<Plan['alternatives'][number]['more'], string>> = {
  rig: 'One more rig',
  tester: 'One more tester',
  submission: 'One more submission of each entry',
  specimens: 'Twice the specimens',
};

/** What more of anything would buy in one category, simulated from what is accepted. */
export function Planning({ slug, compared }: Props) {
  const [plan, setPlan] = useState<Plan | null>(null);
  const [isAtWork, setIsAtWork] = useState(false);
  return (
    <details>
      <summary>What would more testing buy?</summary>
      <p>Seasons like this one are simulated from what is accepted so far. It takes up to half a minute.</p>
      <Form
        schema={planQuery}
        submit="Work it out"
        keptAs={null}
        fields={[
          {
            name: 'category',
            label: 'Category',
            kind: 'choice',
            options: compared.flatMap(({ division, name: of, categories }) =>
              categories.map(({ code, name }) => [`${division ?? ''}${APART}${code}`, of ? `${of}: ${name}` : name] as const),
            ),
          },
          { name: 'difference', label: 'Difference that is to be told, %', kind: 'number', value: '5' },
        ]}
        prepare={({ category, ...rest }) => {
          const [division = '', code] = String(category).split(APART);
          return { ...rest, category: code, ...(division && { division }) };
        }}
        onSend={async ({ category, division, difference }) => {
          const within = division ? `&division=${division}` : '';
          setIsAtWork(true);
          try {
            setPlan(await ask(planResponse, 'GET', `editions/${slug}/plan?category=${category}${within}&difference=${difference}`));
          } finally {
            setIsAtWork(false);
          }
          return '';
        }}
      />
      <p role="status">{isAtWork && 'Being worked out; you can go on with the page meanwhile.'}</p>
      {plan && <Found {...plan} />}
    </details>
  );
}

function Found({ season, expected, alternatives, needed, differencePercent, entries }: Plan) {
  const best = alternatives.toSorted((one, other) => Number(other.narrowerPercent) - Number(one.narrowerPercent));
  return (
    <>
      <p>
        With {season.rigs} rigs, {season.testers} testers, {season.submissions} submissions of each entry and {season.specimens} specimens
        of each submission, {entries} entries have place intervals of {expected.width} places on average, {expected.couldBeFirst} could be
        first, and a difference of {differencePercent} % is told with a chance of {expected.powerPercent} %.
      </p>
      <ul class="rows">
        {best.map(({ more, expected: then, narrowerPercent, standardErrorPercent }) => (
          <li key={more}>
            <p>
              {MORE[more]}{' '}
              {Number(narrowerPercent) > 2 * Number(standardErrorPercent)
                ? `narrows the table by ${narrowerPercent} % (± ${standardErrorPercent} %)`
                : 'would not narrow the table so that one could tell'}
            </p>
            <span>
              {then.width} places, {then.couldBeFirst} could be first, chance {then.powerPercent} %
            </span>
          </li>
        ))}
      </ul>
      <p>To tell {differencePercent} % with a chance of 80 %, with these rigs and testers:</p>
      <ul class="rows">
        {needed.map(({ submissions, specimens, powerPercent }) => (
          <li key={submissions}>
            <p>
              {submissions} {submissions === 1 ? 'submission' : 'submissions'} of each entry
            </p>
            <span>{specimens === null ? `not even 64 specimens: ${powerPercent} %` : `${specimens} specimens of each`}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
