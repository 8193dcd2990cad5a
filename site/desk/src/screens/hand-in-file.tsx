import { useState } from 'preact/hooks';
import { z } from 'zod';
import { handedInAnswer, submissionPreview } from '../../../../api/contract/endpoints/submissions.js';
import { ask } from '../http/ask.js';
import { newKey } from '../http/new-key.js';
import { Refusal } from '../http/problem.js';
import type { Fault } from '../http/problem.js';
import { Findings } from '../parts/findings.js';
import { wordsOf } from '../words/words-of.js';

const filePreview = z.strictObject({ submissions: z.array(submissionPreview) });

interface Looked {
  readonly name: string;
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

  const look = async (file: File | undefined) => {
    if (!file) return;
    const read = { name: file.name, text: await file.text(), key: newKey() };
    setSaid('');
    try {
      const { submissions } = await ask(filePreview, 'POST', 'submissions/preview', { body: read.text });
      setLooked({ ...read, submissions, faults: [], words: '' });
    } catch (error) {
      setLooked({ ...read, submissions: [], faults: error instanceof Refusal ? error.faults : [], words: wordsOf(error) });
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
      setSaid(wordsOf(error));
    }
  };
  return (
    <>
      <h1>Hand in a file</h1>
      <p>
        CSV with a header row, one row a specimen. <a href="/samples/hand-in.csv">A sample</a>. Nothing is stored until you say so.
      </p>
      <div
        class="drop"
        onDragOver={(event) => event.preventDefault()}
        onDrop={(event) => {
          event.preventDefault();
          void look(event.dataTransfer?.files[0]);
        }}
      >
        <label for="file">Drop the file here, or choose it</label>
        <input id="file" type="file" accept=".csv,text/csv" onChange={(event) => void look(event.currentTarget.files?.[0])} />
      </div>
      <p role="status">{said}</p>
      {looked && <Faults {...looked} />}
      {looked && looked.submissions.length > 0 && (
        <section>
          <h2>
            {looked.name}: {looked.submissions.length} submissions
          </h2>
          {looked.submissions.map(({ spool, method, rows, findings, figures }) => (
            <div key={`${spool}-${method.slug}-${rows?.first ?? 0}`}>
              <h3>
                <span class="code">{spool}</span> {method.slug}{' '}
                <span class="soft">
                  rows {rows?.first}–{rows?.last}, {String(figures['validSpecimens'])} valid
                </span>
              </h3>
              <Findings findings={findings} isTester />
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
