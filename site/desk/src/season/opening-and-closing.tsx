import { useState } from 'preact/hooks';
import type { z } from 'zod';
import type { boardResponse } from '../../../../api/contract/endpoints/board.js';
import type { Obstacle } from '../../../../api/contract/obstacle.js';
import { Obstacles } from './obstacles.js';

export const IN_THE_WAY = 'in-the-way';

interface Props {
  readonly obstacles: readonly Obstacle[];
  readonly name: string;
}

export function Opening({ obstacles, name, onOpen }: Props & { readonly onOpen: () => void }) {
  return (
    <section>
      <h2>Open it</h2>
      <Obstacles of={obstacles} />
      <p>From the opening on, its methods, checks and the key of the blind codes are fixed, and testers hand in.</p>
      <button type="button" class="main" aria-disabled={obstacles.length > 0} onClick={() => obstacles.length === 0 && onOpen()}>
        Open {name}
      </button>
    </section>
  );
}

/** It cannot be undone: what would be closed over is told before the second press. */
export function Closing({
  obstacles,
  name,
  entries,
  onClose,
}: Props & { readonly entries: z.infer<typeof boardResponse>['entries']; readonly onClose: () => void }) {
  const [isAsked, setIsAsked] = useState(false);
  const lacking = entries.filter(({ missing, exclusion }) => missing.length > 0 && exclusion === null).length;
  return (
    <section>
      <h2>Close it</h2>
      {obstacles.length > 0 && (
        <p>
          <a href={`#${IN_THE_WAY}`}>{obstacles.length === 1 ? 'Something stands' : `${obstacles.length} things stand`} in the way</a>, each
          with what to do about it.
        </p>
      )}
      <p>After the closing nobody hands in any more. It cannot be opened again.</p>
      {isAsked ? (
        <>
          <p role="status" class={lacking > 0 ? 'signal' : ''}>
            {lacking > 0
              ? `${lacking} of ${entries.length} entries lack a result in some category and will stand without a place.`
              : 'Every entry has what it needs.'}
          </p>
          <p class="acts">
            <button type="button" class="main" onClick={onClose}>
              Yes, close {name}
            </button>
            <button type="button" onClick={() => setIsAsked(false)}>
              Not yet
            </button>
          </p>
        </>
      ) : (
        <button type="button" class="main" aria-disabled={obstacles.length > 0} onClick={() => obstacles.length === 0 && setIsAsked(true)}>
          Close {name}
        </button>
      )}
    </section>
  );
}
