import { useEffect, useState } from 'preact/hooks';
import { submissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { tracesResponse } from '../../../../api/contract/endpoints/traces.js';
import { ask } from '../http/ask.js';
import { Refusal } from '../http/problem.js';
import { FileDrop } from '../parts/file-drop.js';
import { wordsOf } from '../words/words-of.js';

/** The record of a pull, as the logger wrote it, with the specimen that it is of. */
export interface PullRecord {
  readonly file: File;
  readonly specimen: number;
}

interface Props {
  readonly reference: string;
  /** Those that were dropped while the readings were entered. */
  readonly records?: readonly PullRecord[];
}

/** Adds records of pulls to what was handed in; each says whether it was taken. */
export function RecordsToSend({ reference, records = [] }: Props) {
  const [said, setSaid] = useState<readonly string[]>([]);
  const [specimen, setSpecimen] = useState('1');
  const tell = (words: string) => setSaid((before) => [...before, words]);
  const send = async ({ file, specimen: number }: PullRecord) => {
    try {
      const { version } = await ask(submissionResponse, 'GET', `submissions/${reference}`);
      await ask(tracesResponse, 'POST', `submissions/${reference}/traces?specimen=${number}`, { body: await file.text(), version });
      tell(`${file.name} is kept as the record of specimen ${number}.`);
    } catch (error) {
      const faults = error instanceof Refusal ? error.faults.map(({ detail }) => detail).slice(0, 3) : [];
      tell([`${file.name} was not taken. ${wordsOf(error)}`, ...faults].join(' '));
    }
  };
  const sendAll = async (all: readonly PullRecord[]) => {
    for (const one of all) await send(one);
  };
  useEffect(() => void sendAll(records), []);
  return (
    <>
      <div role="status">
        <ul class="plain">
          {said.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      </div>
      <details>
        <summary>Add the record of a pull (force over extension or time)</summary>
        <label class="narrow">
          Of specimen <input inputMode="numeric" value={specimen} onInput={(event) => setSpecimen(event.currentTarget.value)} />
        </label>
        <FileDrop
          id={`record-${reference}`}
          label="Drop the logger’s CSV here, or choose it"
          accept=".csv,.txt,.tsv"
          onFiles={(files) => void sendAll(files.map((file) => ({ file, specimen: Number(specimen) })))}
        />
      </details>
    </>
  );
}
