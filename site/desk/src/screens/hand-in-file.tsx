import { useState } from 'preact/hooks';
import { z } from 'zod';
import { handedInAnswer, submissionPreview } from '../../../../api/contract/endpoints/submissions.js';
import { ask } from '../http/ask.js';
import { newKey } from '../http/new-key.js';
import { Refusal } from '../http/problem.js';
import type { Fault } from '../http/problem.js';
import { FileDrop } from '../parts/file-drop.js';
import { Findings } from '../parts/findings.js';
import { useMethodNames } from '../parts/use-method-names.js';
import { isWorkbook, readTable, toCsv } from '../table/read-table.js';
import type { Table } from '../table/read-table.js';
import { dayAs, foreignDays, withDays } from '../table/reread-days.js';
import type { DayOrder } from '../table/reread-days.js';
import { dayOf } from '../words/day-of.js';
import { failureWords } from '../words/failure-words.js';

const filePreview = z.strictObject({ submissions: z.array(submissionPreview) });

interface Looked {
  readonly name: string;
  /** Its cells, where it reads as a table. */
  readonly table: Table | null;
  readonly text: string;
  /** The same file is handed in once, however often it is sent. */
  readonly key: string;
  readonly submissions: z.infer<typeof filePreview>['submissions'];
  readonly faults: readonly Fault[];
  readonly words: string;
}

/** A CSV file: dropped or chosen, looked at first, its faults by row; then all of it is handed in, or nothing. */
export function HandInFile() {
  const [looked, setLooked] = useState<Looked | null>(null);
  const [said, setSaid] = useState('');
  const nameOf = useMethodNames();

  const open = async (file: File | undefined) => {
    if (!file) return;
    setLooked(null);
    try {
      const table = await readTable(file);
      await look({ name: file.name, table, text: table.isWorkbook ? await toCsv(table.cells) : await file.text() });
    } catch (error) {
      // What is wrong with a text the server tells row by row; a workbook it does not read.
      if (await isWorkbook(file)) setSaid(failureWords(error));
      else await look({ name: file.name, table: null, text: await file.text() });
    }
  };
  const readAgain = async (table: Table, cells: Table['cells']) =>
    look({ name: table.name, table: { ...table, cells }, text: await toCsv(cells) });
  const look = async (file: Pick<Looked, 'name' | 'table' | 'text'>) => {
    const read = { ...file, key: newKey() };
    setSaid('');
    try {
      const { submissions } = await ask(filePreview, 'POST', 'submissions/preview', { body: read.text });
      setLooked({ ...read, submissions, faults: [], words: '' });
    } catch (error) {
      setLooked({ ...read, submissions: [], faults: error instanceof Refusal ? error.faults : [], words: failureWords(error) });
    }
  };
  const handIn = async ({ text, key }: Looked) => {
    try {
      const answer = await ask(handedInAnswer, 'POST', 'submissions', { body: text, key });
      setLooked(null);
      setSaid(
        `Handed in: ${'submissions' in answer ? answer.submissions.map(({ reference }) => reference).join(', ') : answer.reference}.`,
      );
    } catch (error) {
      setSaid(failureWords(error));
    }
  };
  return (
    <>
      <h1>Hand in a file</h1>
      <p>
        CSV or a workbook (.xlsx) with a header row, one row a specimen. <a href="/samples/hand-in.csv">A sample</a>. Nothing is stored
        until you say so.
      </p>
      <FileDrop
        id="file"
        label="Drop the file here, or choose it"
        accept=".csv,.tsv,.xlsx,text/csv"
        onFiles={([file]) => void open(file)}
      />
      <p role="status">{said}</p>
      {looked?.table?.isWorkbook === true && (
        <p class="caution">
          A workbook keeps 36.1 where a gauge showed 36.10: zeros at the end are gone. Where they matter, save it as CSV from cells that are
          text.
        </p>
      )}
      {looked?.table && <Readings table={looked.table} onRead={readAgain} />}
      {looked && <Faults {...looked} />}
      {looked && looked.submissions.length > 0 && (
        <section>
          <h2>
            {looked.name}: {looked.submissions.length} submissions
          </h2>
          {looked.submissions.map(({ spool, method, rows, findings, figures }) => (
            <div key={`${spool}-${method.slug}-${rows?.first ?? 0}`}>
              <h3>
                <span class="code">{spool}</span> {nameOf(method.slug)}{' '}
                <span class="soft">
                  rows {rows?.first}–{rows?.last}, {String(figures['validSpecimens'])} valid
                </span>
              </h3>
              <Findings findings={findings} method={method} />
            </div>
          ))}
          <p class="acts">
            <button type="button" class="main" onClick={() => void handIn(looked)}>
              Hand in all of it
            </button>
          </p>
        </section>
      )}
    </>
  );
}

interface ReadingsProps {
  readonly table: Table;
  readonly onRead: (table: Table, cells: Table['cells']) => Promise<void>;
}

/** Days that may be meant in two ways: one press says which, and the file is looked at again. */
function Readings({ table, onRead }: ReadingsProps) {
  const { columns, first } = foreignDays(table.cells);
  const orders = (['dayFirst', 'monthFirst'] satisfies DayOrder[]).flatMap((order) => {
    const day = dayAs(first, order);
    return day === null ? [] : [{ order, day }];
  });
  if (orders.length === 0) return null;
  return (
    <p class="acts">
      {orders.map(({ order, day }) => (
        <button type="button" key={order} onClick={() => void onRead(table, withDays(table.cells, columns, order))}>
          {first} is {dayOf(day)}
        </button>
      ))}
    </p>
  );
}

function Faults({ faults, words }: Looked) {
  if (words === '') return null;
  return (
    <section>
      <p role="alert" class="signal">
        {words}
      </p>
      <ul class="rows">
        {faults.map(({ row, column, found, detail }, i) => (
          <li key={i}>
            <p>
              {row !== undefined && (
                <strong>
                  Row {row}
                  {column !== undefined && `, ${column}`}:{' '}
                </strong>
              )}
              {detail}
            </p>
            {found !== undefined && <span class="soft">found “{found}”</span>}
          </li>
        ))}
      </ul>
    </section>
  );
}
