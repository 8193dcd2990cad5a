import { useContext, useEffect, useState } from 'preact/hooks';
import { z } from 'zod';
import { testersResponse } from '../../../../api/contract/endpoints/accounts.js';
import { assignmentRequest, assignmentsResponse } from '../../../../api/contract/endpoints/assignments.js';
import { spoolsResponse } from '../../../../api/contract/endpoints/spools.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useAct } from '../parts/use-act.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';
import { inNames, NameOf } from '../parts/variant-names.js';

interface Props {
  readonly slug: string;
  readonly methods: readonly { readonly slug: string }[];
  /** What each entry lacks, in words; nothing where it has enough. */
  readonly entries: readonly { readonly variant: string; readonly needs: readonly string[] }[];
  /** The one entry whose spools are shown; null for all. */
  readonly wanted: string | null;
  readonly onAll: () => void;
}

/** Who is asked to pull what, with what each entry lacks beside its spools. */
export function Assigning(props: Props) {
  const [isOpen, setIsOpen] = useState(false);
  useEffect(() => {
    if (props.wanted !== null) setIsOpen(true);
  }, [props.wanted]);
  return (
    <details id="who-pulls-what" open={isOpen} onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>Who pulls what</summary>
      {isOpen && <Work {...props} />}
    </details>
  );
}

function Work({ slug, methods, entries, wanted, onAll }: Props) {
  const nameOf = useContext(NameOf);
  const work = useLoaded(async () => {
    const [given, testers, spools] = await Promise.all([
      ask(assignmentsResponse, 'GET', `editions/${slug}/assignments`),
      ask(testersResponse, 'GET', 'testers'),
      allPages(spoolsResponse, 'catalogue/spools?limit=200'),
    ]);
    const lacking = new Map(entries.map(({ variant, needs }) => [variant, needs]));
    const entered = spools.filter(({ variant }) => lacking.has(variant));
    const needOf = (variant: string) => lacking.get(variant)?.length ?? 0;
    return {
      given: given.items,
      testers: testers.items,
      spools: entered
        .sort((one, other) => needOf(other.variant) - needOf(one.variant))
        .map(({ blindCode, variant }) => ({ blindCode, variant, needs: lacking.get(variant) ?? [] })),
    };
  }, [slug]);
  const { said, act } = useAct(work.again);
  if (!work.answer) return <Loading of={work} />;
  const { given, testers } = work.answer;
  const spools = work.answer.spools.filter(({ variant }) => wanted === null || variant === wanted);
  return (
    <>
      <p role="status">{said}</p>
      {given.length === 0 && (
        <p class="soft">Nobody is asked for anything yet. Testers may pull all the same; this list tells them what is wanted.</p>
      )}
      <ul class="rows">
        {given.map(({ id, tester, spool, method, specimens, dueOn, handedIn }) => (
          <li key={id}>
            <p>
              {tester.displayName}: <span class="code">{spool}</span> {nameOf(method)}
              <br />
              <span class="soft">
                {specimens} specimens{dueOn !== null && `, until ${dayOf(dueOn)}`}
              </span>
            </p>
            {handedIn === null ? (
              <button
                type="button"
                onClick={() =>
                  act(() => ask(z.null(), 'DELETE', `assignments/${id}`), `${spool} is not asked of ${tester.displayName} any more.`)
                }
              >
                Take back
                <span class="only-heard">
                  {' '}
                  {spool} from {tester.displayName}
                </span>
              </button>
            ) : (
              <span>handed in: {handedIn}</span>
            )}
          </li>
        ))}
      </ul>
      {wanted !== null && (
        <p>
          {spools.length === 0
            ? `There is no spool of ${nameOf(wanted)} yet; the catalogue takes one.`
            : `Spools of ${nameOf(wanted)} alone.`}{' '}
          <button type="button" onClick={onAll}>
            Show those of every entry
          </button>
        </p>
      )}
      <Form
        schema={assignmentRequest}
        submit="Ask for it"
        keptAs={`assignment ${slug}`}
        fields={[
          { name: 'tester', label: 'Who', kind: 'choice', options: testers.map(({ id, displayName }) => [id, displayName] as const) },
          {
            name: 'method',
            label: 'By which method',
            kind: 'choice',
            options: methods.map((method) => [method.slug, nameOf(method.slug)] as const),
          },
          { name: 'specimens', label: 'Specimens of each', kind: 'number', value: '8' },
          { name: 'dueOn', label: 'Until', kind: 'date', isOptional: true },
          {
            name: 'spools',
            label: 'Spools, those whose entry lacks most first',
            kind: 'several',
            options: spools.map(({ blindCode, variant, needs }) => {
              const lacks = needs.length > 0 ? `: lacks ${inNames(needs.join('; '), nameOf)}` : '';
              return [blindCode, `${blindCode}, ${nameOf(variant)}${lacks}`] as const;
            }),
          },
        ]}
        onSend={async (request) => {
          await ask(assignmentsResponse, 'POST', `editions/${slug}/assignments`, { body: request });
          work.again();
          return request.spools.length === 1 ? 'Asked for.' : `${request.spools.length} spools are asked for.`;
        }}
      />
    </>
  );
}
