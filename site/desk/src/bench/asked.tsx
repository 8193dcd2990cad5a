import { ownAssignmentsResponse } from '../../../../api/contract/endpoints/assignments.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';

/** What an editor asks this tester to pull: code, method, how many, by when. */
export function Asked({ nameOf }: { nameOf: (method: string) => string }) {
  const asked = useLoaded(() => ask(ownAssignmentsResponse, 'GET', 'assignments'));
  const items = asked.answer?.items ?? [];
  const open = items.filter(({ handedIn }) => handedIn === null);
  return (
    <>
      <Loading of={asked} />
      {items.length > 0 && (
        <h3>
          Asked of you: {open.length} of {items.length} to pull
        </h3>
      )}
      <ul class="rows">
        {open.map(({ id, spool, method, specimens, dueOn }) => (
          <li key={id}>
            <p>
              <span class="code">{spool}</span> {nameOf(method)}
              <br />
              <span class="soft">
                {specimens} specimens{dueOn !== null && `, until ${dayOf(dueOn)}`}
              </span>
            </p>
            <a class="key" href={`/desk/enter/?spool=${spool}&method=${method}`}>
              Begin
            </a>
          </li>
        ))}
      </ul>
    </>
  );
}
