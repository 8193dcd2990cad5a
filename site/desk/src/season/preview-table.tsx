import { previewResponse } from '../../../../api/contract/endpoints/previews.js';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { z } from 'zod';
import { ask } from '../http/ask.js';
import { dayOf, timeOf } from '../words/day-of.js';
import { failureWords } from '../words/failure-words.js';
import { ChangedCells } from './changed-cells.js';

type Preview = z.infer<typeof previewResponse>;

/** The standings as they would be published now, and what changed since the look before. */
export function PreviewTable({ slug }: { slug: string }) {
  const [preview, setPreview] = useState<Preview | null>(null);
  const [fault, setFault] = useState('');
  const [isAtWork, setIsAtWork] = useState(false);
  const look = () => {
    setIsAtWork(true);
    ask(previewResponse, 'POST', `editions/${slug}/previews`)
      .then(setPreview, (error: unknown) => setFault(failureWords(error)))
      .finally(() => setIsAtWork(false));
  };
  return (
    <>
      <p class="acts">
        <button type="button" onClick={look}>
          {preview ? 'Look again' : 'Look at the standings'}
        </button>
      </p>
      <p role="status">{isAtWork && 'Being worked out; you can go on with the page meanwhile.'}</p>
      {fault !== '' && <p role="alert">{fault}</p>}
      {preview && <Standings {...preview} />}
    </>
  );
}

function Standings({ overall, categories, incomplete, divisions, since }: Preview) {
  return (
    <>
      {since && (
        <p role="status">
          Since {dayOf(since.at)}, {timeOf(new Date(since.at))}:{' '}
          {since.changes.length === 0 ? 'nothing changed.' : 'what follows has changed.'}
        </p>
      )}
      {since && since.changes.length > 0 && <ChangedCells changes={since.changes} />}
      {(divisions ?? [{ division: '', overall, categories, incomplete }]).map((one) => (
        <OneTable key={one.division} {...one} />
      ))}
    </>
  );
}

type Tables = Pick<Preview, 'overall' | 'categories' | 'incomplete'>;

function OneTable({ division, overall, categories, incomplete }: Tables & { readonly division: string }) {
  return (
    <>
      <table class="sheet narrow">
        <caption>{division === '' ? 'Overall' : `Overall, ${division}`}, as it would be published now.</caption>
        <Head value="Score" />
        <tbody>
          {overall.map(({ variant, place, score, group }) => (
            <Row key={variant} {...{ variant, place, group }}>
              {score}
            </Row>
          ))}
        </tbody>
      </table>
      {incomplete.length > 0 && (
        <p class="soft">Without a place, as something lacks: {incomplete.map(({ variant }) => variant).join(', ')}.</p>
      )}
      {Object.entries(categories).map(([code, rows]) => (
        <details key={code}>
          <summary>
            {rows[0]?.figure?.name ?? code}
            <span class="soft"> {division}, value with its 95 % interval</span>
          </summary>
          <table class="sheet narrow">
            <Head value={`${rows[0]?.figure?.name ?? 'Value'}, ${rows[0]?.figure?.unit ?? ''}`} />
            <tbody>
              {rows.map(({ variant, place, group, value, figure }) => (
                <Row key={variant} {...{ variant, place, group }}>
                  {figure?.value ?? value}
                  {figure && figure.low !== null && figure.high !== null && (
                    <span class="soft small">
                      {' '}
                      {figure.low}–{figure.high}
                    </span>
                  )}
                </Row>
              ))}
            </tbody>
          </table>
        </details>
      ))}
    </>
  );
}

const Head = ({ value }: { value: string }) => (
  <thead>
    <tr>
      <th scope="col" class="num">
        Place
      </th>
      <th scope="col">Variant</th>
      <th scope="col" class="num">
        {value}
      </th>
      <th scope="col" class="num">
        Group
      </th>
    </tr>
  </thead>
);

interface RowProps {
  readonly variant: string;
  readonly place: number | null;
  readonly group: number | null;
  readonly children: ComponentChildren;
}

const Row = ({ variant, place, group, children }: RowProps) => (
  <tr>
    <td class="num place">{place ?? '–'}</td>
    <th scope="row">{variant}</th>
    <td class="num">{children}</td>
    <td class="num">{group ?? '–'}</td>
  </tr>
);
