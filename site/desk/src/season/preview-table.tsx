import { previewResponse } from '../../../../api/contract/endpoints/previews.js';
import { useState } from 'preact/hooks';
import type { z } from 'zod';
import { ask } from '../http/ask.js';
import { dayOf, timeOf } from '../words/day-of.js';
import { wordsOf } from '../words/words-of.js';

type Preview = z.infer<typeof previewResponse>;

/** The standings as they would be published now, and what changed since the look before. */
export function PreviewTable({ slug }: { slug: string }) {
  const [preview, setPreview] = useState<Preview | null>(null);
  const [fault, setFault] = useState('');
  const look = () => {
    ask(previewResponse, 'POST', `editions/${slug}/previews`).then(setPreview, (error: unknown) => setFault(wordsOf(error)));
  };
  return (
    <>
      <p class="acts">
        <button type="button" onClick={look}>
          {preview ? 'Look again' : 'Look at the standings'}
        </button>
      </p>
      {fault !== '' && <p role="alert">{fault}</p>}
      {preview && <Standings {...preview} />}
    </>
  );
}

function Standings({ overall, incomplete, divisions, since }: Preview) {
  return (
    <>
      {since && (
        <p role="status">
          Since {dayOf(since.at)}, {timeOf(new Date(since.at))}:{' '}
          {since.changes.length === 0 ? 'nothing changed.' : `${since.changes.length} cells changed.`}
        </p>
      )}
      {since && since.changes.length > 0 && (
        <ul class="rows">
          {since.changes.map(({ where, before, after }) => (
            <li key={where}>
              <p>{where}</p>
              <span>
                {before ?? 'nothing'} → {after ?? 'nothing'}
              </span>
            </li>
          ))}
        </ul>
      )}
      {(divisions ?? [{ division: '', overall, incomplete }]).map((one) => (
        <OneTable key={one.division} {...one} />
      ))}
    </>
  );
}

function OneTable({ division, overall, incomplete }: Pick<Preview, 'overall' | 'incomplete'> & { readonly division: string }) {
  return (
    <>
      <table class="sheet narrow">
        <caption>{division === '' ? 'Overall' : `Overall, ${division}`}, as it would be published now.</caption>
        <thead>
          <tr>
            <th scope="col" class="num">
              Place
            </th>
            <th scope="col">Variant</th>
            <th scope="col" class="num">
              Score
            </th>
          </tr>
        </thead>
        <tbody>
          {overall.map(({ variant, place, score }) => (
            <tr key={variant}>
              <td class="num place">{place ?? '–'}</td>
              <th scope="row">{variant}</th>
              <td class="num">{score}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {incomplete.length > 0 && (
        <p class="soft">Without a place, as something lacks: {incomplete.map(({ variant }) => variant).join(', ')}.</p>
      )}
    </>
  );
}
