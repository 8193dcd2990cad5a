import type { z } from 'zod';
import type { ownAssignmentsResponse } from '../../../../api/contract/endpoints/assignments.js';
import { dayOf } from '../words/day-of.js';

interface Props {
  readonly items: z.infer<typeof ownAssignmentsResponse>['items'];
  readonly nameOf: (method: string) => string;
}

/** What an editor asks this tester to pull: code, method, how many, by when. */
export function Asked({ items, nameOf }: Props) {
  const open = items.filter(({ handedIn }) => handedIn === null);
  return (
    <>
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
