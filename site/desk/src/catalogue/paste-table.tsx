import { useEffect, useState } from 'preact/hooks';
import { Refusal } from '../http/problem.js';
import { FileDrop } from '../parts/file-drop.js';
import { useKept } from '../parts/on-device.js';
import { cellsOfText, readTable, toCsv } from '../table/read-table.js';
import { failureWords } from '../words/failure-words.js';
import { addRow } from './add-row.js';
import { COLUMNS, pastedRows, titleAt } from './pasted-rows.js';
import type { PastedRow, PastedTable } from './pasted-rows.js';

const REQUIRED = COLUMNS.filter(({ fallback }) => fallback === '').map(({ title }) => title);
const OTHERS = COLUMNS.filter(({ fallback }) => fallback !== '').map(({ title, fallback }) =>
  fallback ? `${title} (else ${fallback})` : title,
);

/** Many spools at once, from a spreadsheet: looked at first, each row with its faults or, in the end, its code. */
export function PasteTable({ onAdded }: { onAdded: () => void }) {
  const [text, setText] = useKept('catalogue-table', '');
  const [table, setTable] = useState<PastedTable | null>(null);
  const [results, setResults] = useState<Readonly<Record<number, string>>>({});
  const [said, setSaid] = useState('');
  const look = (cells: Promise<readonly (readonly string[])[]>) => {
    setResults({});
    setSaid('');
    cells.then(
      (found) => setTable(found.length > 1 ? pastedRows(found) : null),
      (error: unknown) => setSaid(failureWords(error)),
    );
  };
  const [isFromBefore] = useState(text !== '');
  useEffect(() => {
    if (isFromBefore) look(cellsOfText(text));
  }, []);
  const sound =
    table === null || table.unknown.length + table.missing.length > 0 ? [] : table.rows.filter(({ request }) => request !== null);
  const open = sound.filter(({ line }) => !(results[line] ?? '').startsWith('code '));
  const add = async () => {
    if (!table) return;
    let left = table.rows;
    for (const { line, request } of open) {
      if (!request) continue;
      try {
        const { blindCode, first } = await addRow(request);
        setResults((before) => ({ ...before, [line]: [`code ${blindCode}`, ...first.map((one) => `new: ${one}`)].join(', ') }));
        // What is on record is not there to be added once more after a reload.
        left = left.filter((row) => row.line !== line);
        setText(left.length === 0 ? null : await toCsv([table.titles, ...left.map(({ cells }) => cells)]));
      } catch (error) {
        setResults((before) => ({ ...before, [line]: refusedAs(error) }));
      }
    }
    setSaid('Done. What was refused stays here; correct it and add again.');
    onAdded();
  };
  return (
    <details open={isFromBefore}>
      <summary>Many at once: paste a table</summary>
      <p>
        Copy the rows with their header from a spreadsheet. Columns, in any order: <strong>{REQUIRED.join(', ')}</strong>; where there are:{' '}
        {OTHERS.join(', ')}.
      </p>
      <label class="field">
        The table
        <textarea
          rows={5}
          spellcheck={false}
          value={text}
          onInput={(event) => {
            setText(event.currentTarget.value || null);
            look(cellsOfText(event.currentTarget.value));
          }}
        />
      </label>
      <FileDrop
        id="catalogue-file"
        label="Or drop a file (.xlsx, .csv)"
        accept=".csv,.tsv,.xlsx"
        onFiles={([file]) => file && look(readTable(file).then(({ cells }) => cells))}
      />
      {table && table.unknown.length > 0 && (
        <p role="alert" class="signal">
          No column here: {table.unknown.join(', ')}. Correct or remove it.
        </p>
      )}
      {table && table.missing.length > 0 && (
        <p role="alert" class="signal">
          The table lacks: {table.missing.join(', ')}.
        </p>
      )}
      {table && <Rows table={table} results={results} />}
      {table && (
        <p class="acts">
          <button type="button" class="main" aria-disabled={open.length === 0} onClick={() => open.length > 0 && void add()}>
            Add {open.length} {open.length === 1 ? 'spool' : 'spools'}
          </button>
        </p>
      )}
      <p role="status">{said}</p>
    </details>
  );
}

function Rows({ table: { titles, rows }, results }: { table: PastedTable; results: Readonly<Record<number, string>> }) {
  return (
    <div class="matrix" tabIndex={0} role="region" aria-label="The table as it was read">
      <table>
        <thead>
          <tr>
            <th scope="col">Row</th>
            <th scope="col">What is with it</th>
            {titles.map((title, index) => (
              <th scope="col" key={index}>
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.line}>
              <th scope="row">{row.line}</th>
              <td>{stateOf(row, results[row.line])}</td>
              {titles.map((_, index) => (
                <td key={index}>{row.cells[index]}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const stateOf = ({ faults }: PastedRow, result: string | undefined) =>
  faults.length > 0 ? (
    <span class="signal">{faults.join(' ')}</span>
  ) : (
    <span class={result?.startsWith('code') === false ? 'signal' : ''}>{result ?? 'sound'}</span>
  );

const refusedAs = (error: unknown): string =>
  [
    failureWords(error),
    ...(error instanceof Refusal ? error.faults.map(({ pointer, detail }) => `${titleAt(pointer.slice(1))}: ${detail}`) : []),
  ].join(' ');
