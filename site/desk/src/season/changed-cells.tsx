import { useContext } from 'preact/hooks';
import type { z } from 'zod';
import type { previewResponse } from '../../../../api/contract/endpoints/previews.js';
import { inNames, NameOf } from '../parts/variant-names.js';

type Changes = NonNullable<z.infer<typeof previewResponse>['since']>['changes'];

/** Places say what matters; whoever wants every figure opens the rest. */
const isPlace = ({ where }: Changes[number]): boolean => where.endsWith(', place');

/** Cells that readers see otherwise: places at once, all else behind a press. */
export function ChangedCells({ changes }: { readonly changes: Changes }) {
  if (changes.length === 0) return <p>No cell that readers see would change.</p>;
  const places = changes.filter(isPlace);
  const others = changes.filter((change) => !isPlace(change));
  return (
    <>
      <p>
        {places.length === 0 ? 'No place changes' : `${places.length} ${places.length === 1 ? 'place changes' : 'places change'}`}
        {others.length > 0 && `, and ${others.length} other ${others.length === 1 ? 'cell' : 'cells'}`}.
      </p>
      <Cells of={places} />
      {others.length > 0 && (
        <details>
          <summary>Scores, intervals, groups and what else</summary>
          <Cells of={others} />
        </details>
      )}
    </>
  );
}

function Cells({ of }: { of: Changes }) {
  const nameOf = useContext(NameOf);
  return (
    <ul class="rows">
      {of.map(({ where, before, after }) => (
        <li key={where}>
          <p>{inNames(where, nameOf)}</p>
          <span>
            {before ?? 'nothing'} → {after ?? 'nothing'}
          </span>
        </li>
      ))}
    </ul>
  );
}
