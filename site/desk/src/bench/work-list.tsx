import { ownAssignmentsResponse } from '../../../../api/contract/endpoints/assignments.js';
import type { MethodResponse } from '../../../../api/contract/endpoints/methods.js';
import { blindSpoolsResponse } from '../../../../api/contract/endpoints/spools.js';
import { submissionsResponse } from '../../../../api/contract/endpoints/submissions.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { Asked } from './asked.js';
import type { BenchContext } from './bench-context.js';
import { CodeForm } from './code-form.js';
import { copiesOf } from './device-copy.js';
import { isBlank } from './sheet.js';

const AT_ONCE = 200;

interface Props {
  readonly context: BenchContext;
  readonly methods: readonly MethodResponse[];
  readonly accountId: string;
}

/** A code is scanned or typed and its check character looked at before anything is asked; below, what is begun and what is done. */
export function WorkList({ context, methods, accountId }: Props) {
  const work = useLoaded(async () => {
    const [spools, own] = await Promise.all([
      allPages(blindSpoolsResponse, `spools?limit=${AT_ONCE}`),
      allPages(submissionsResponse, `submissions?edition=${context.edition}&limit=${AT_ONCE}`),
    ]);
    return { spools, own };
  }, [context.edition]);
  const asked = useLoaded(async () => (await ask(ownAssignmentsResponse, 'GET', 'assignments')).items);
  const current = methods.filter(({ versions }) =>
    versions.some((one) => one.effectiveFrom <= context.benchDay && (one.effectiveUntil ?? '9999') >= context.benchDay),
  );
  const drafts = work.answer?.own.filter(({ state }) => state === 'draft') ?? [];
  const onDevice = copiesOf(accountId).filter(({ reference, sheet }) => reference === null && !isBlank(sheet));
  const nameOf = (slug: string) => methods.find((method) => method.slug === slug)?.name ?? slug;
  return (
    <>
      <CodeForm {...{ accountId }} methods={current} begun={drafts} asked={asked.answer ?? []} day={context.benchDay} />
      <Loading of={asked} />
      <Asked items={asked.answer ?? []} nameOf={nameOf} />
      <Loading of={work} />
      {drafts.length + onDevice.length > 0 && <h3>Begun</h3>}
      <ul class="rows">
        {onDevice.map(({ id, sheet }) => (
          <li key={id}>
            <p>
              <span class="code">{sheet.spool}</span> {nameOf(sheet.method)} <span class="soft">on this device alone so far</span>
            </p>
            <a href={`/desk/enter/?copy=${id}`}>Go on</a>
          </li>
        ))}
        {drafts.map(({ reference, spool, method }) => (
          <li key={reference}>
            <p>
              <span class="code">{spool}</span> {nameOf(method.slug)}
            </p>
            <a href={`/desk/enter/?draft=${reference}`}>Go on</a>
          </li>
        ))}
      </ul>
      {work.answer?.spools.length === 0 && <p>Nothing begun yet: take a spool from the shelf and read the code on it.</p>}
      {work.answer && work.answer.spools.length > 0 && (
        <details>
          <summary>Your {work.answer.spools.length} spools, and what you have handed in of each</summary>
          <ul class="rows">
            {work.answer.spools.map(({ blindCode, lengthM }) => {
              const done = work.answer?.own.filter(({ spool, state }) => spool === blindCode && state !== 'draft') ?? [];
              return (
                <li key={blindCode}>
                  <p>
                    <span class="code">{blindCode}</span> <span class="soft">{lengthM !== null && `${lengthM} m`}</span>
                  </p>
                  <span class="soft">{done.length === 0 ? 'nothing yet' : done.map(({ method }) => nameOf(method.slug)).join(', ')}</span>
                </li>
              );
            })}
          </ul>
        </details>
      )}
    </>
  );
}
