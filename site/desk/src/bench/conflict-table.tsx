import { useState } from 'preact/hooks';
import type { Column } from './method-columns.js';
import { isSame } from './device-copy.js';
import { reasonWords } from './reasons.js';
import { cellOf, isEmpty } from './sheet.js';
import type { Row, Sheet } from './sheet.js';
import { withRoom } from './fill-sheet.js';

interface Props {
  readonly mine: Sheet;
  readonly theirs: Sheet;
  readonly columns: readonly Column[];
  readonly onSettle: (sheet: Sheet) => void;
}

type Side = 'mine' | 'theirs';

/** Two tabs, or two devices, wrote the same draft: both texts by row; the person who sits here chooses. */
export function ConflictTable({ mine, theirs, columns, onSettle }: Props) {
  const numbers = [...new Set([...mine.rows, ...theirs.rows].map(({ number }) => number))].sort((a, b) => a - b);
  const rowOf = (sheet: Sheet, number: number) => sheet.rows.find((row) => row.number === number);
  const pairs = numbers.map((number) => ({ number, mine: rowOf(mine, number), theirs: rowOf(theirs, number) }));
  const differing = pairs.filter((pair) => !isSame(wordsOfRow(pair.mine, columns), wordsOfRow(pair.theirs, columns)));
  const [chosen, setChosen] = useState<Record<number, Side>>(() =>
    Object.fromEntries(differing.map((pair) => [pair.number, pair.mine === undefined || isEmpty(pair.mine) ? 'theirs' : 'mine'])),
  );
  const settle = () => {
    const rows = pairs.flatMap((pair) => (chosen[pair.number] === 'theirs' ? (pair.theirs ?? []) : (pair.mine ?? pair.theirs ?? [])));
    onSettle(withRoom({ ...mine, rows: rows.filter((row, i) => !isEmpty(row) || i === rows.length - 1) }));
  };
  return (
    <section class="conflict" aria-labelledby="conflict-title">
      <h1 id="conflict-title" tabIndex={-1}>
        <span class="code">{mine.spool}</span> was written elsewhere meanwhile
      </h1>
      <p>Another tab or device saved this sheet. Nothing is lost: choose for each row that differs, then go on.</p>
      <table class="entry">
        <thead>
          <tr>
            <th scope="col">No.</th>
            <th scope="col">Here</th>
            <th scope="col">There</th>
          </tr>
        </thead>
        <tbody>
          {differing.map((pair) => (
            <tr key={pair.number}>
              <th scope="row">{pair.number}</th>
              {(['mine', 'theirs'] as const).map((side) => (
                <td key={side}>
                  <label class="tick">
                    <input
                      type="radio"
                      name={`row-${pair.number}`}
                      checked={chosen[pair.number] === side}
                      onChange={() => setChosen({ ...chosen, [pair.number]: side })}
                    />
                    {wordsOfRow(pair[side], columns)}
                  </label>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p class="acts">
        <button type="button" class="main" onClick={settle}>
          Go on with these rows
        </button>
      </p>
    </section>
  );
}

function wordsOfRow(row: Row | undefined, columns: readonly Column[]): string {
  if (row === undefined || isEmpty(row)) return 'nothing';
  const cells = columns.map(({ role }) => cellOf(row, role)).map(({ text, unit }) => `${text || '–'} ${unit}`.trim());
  return [...cells, reasonWords(row.reason), row.condition === 'treated' ? 'treated' : ''].filter((text) => text !== '').join(', ');
}
