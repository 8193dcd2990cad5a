import { useContext } from 'preact/hooks';
import type { z } from 'zod';
import type { CellGroup } from '../../../../api/contract/cell-groups.js';
import type { previewResponse } from '../../../../api/contract/endpoints/previews.js';
import { inNames, NameOf } from '../parts/variant-names.js';

type Changes = NonNullable<z.infer<typeof previewResponse>['since']>['changes'];

/** What changed cells are about, as readers of an erratum are told it. */
export const GROUP_WORDS: Readonly<Record<CellGroup, string>> = {
  places: 'Places and scores',
  values: 'Values',
  intervals: 'Intervals',
  chances: 'Groups and chances',
  movement: 'Movement',
  claims: 'Label claims',
  words: 'Words',
  evidence: 'Evidence',
  record: 'Put right on record',
  documents: 'Documents',
};

/** Of an edition with several divisions, by division in their order, and what is of none: its name and its changes; of another one without a name. */
export const byDivision = (changes: Changes, nameOf: (slug: string) => string): (readonly [string, Changes])[] => {
  const parts = [...Map.groupBy(changes, ({ division }) => division)];
  const isDivided = parts.some(([division]) => division !== undefined);
  return parts.map(([division, own]) => [isDivided ? (division === undefined ? 'Whole edition' : nameOf(division)) : '', own] as const);
};

/** Places say what matters; whoever wants every figure opens the rest. */
const isPlace = ({ where }: Changes[number]): boolean => where.endsWith(', place');

/** Cells that readers see otherwise: places at once, all else behind a press. */
export function ChangedCells({ changes }: { readonly changes: Changes }) {
  const nameOf = useContext(NameOf);
  if (changes.length === 0) return <p>No cell that readers see would change.</p>;
  return (
    <>
      {byDivision(changes, nameOf).map(([division, own]) => (
        <ChangedIn key={division} division={division} changes={own} />
      ))}
    </>
  );
}

function ChangedIn({ division, changes }: { readonly division: string; readonly changes: Changes }) {
  const places = changes.filter(isPlace);
  const others = changes.filter((change) => !isPlace(change));
  return (
    <>
      <p>
        {division !== '' && <strong>{division}. </strong>}
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
