import { useEffect, useState } from 'preact/hooks';
import { submissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { tracesResponse } from '../../../../api/contract/endpoints/traces.js';
import { ask } from '../http/ask.js';
import { NoAnswer, Refusal } from '../http/problem.js';
import { FileDrop } from '../parts/file-drop.js';
import { failureWords } from '../words/failure-words.js';
import { forgetRecord, keepRecord, recordsOf } from './kept-records.js';
import type { PullRecord } from './kept-records.js';

interface Props {
  readonly reference: string;
  readonly accountId: string;
  /** Of the sheet that was handed in just now; null where it is of earlier. */
  readonly copyId: string | null;
}

const AGAIN_MS = 3000;

/** Sends the records of pulls that wait on the device for what was handed in, and takes further ones; each says what became of it. */
export function RecordsToSend({ reference, accountId, copyId }: Props) {
  const [said, setSaid] = useState<readonly string[]>([]);
  const [specimen, setSpecimen] = useState('1');
  const [round, setRound] = useState(0);
  const tell = (words: string) => setSaid((before) => (before.includes(words) ? before : [...before, words]));
  const sendAll = async () => {
    for (const record of await recordsOf({ accountId, copyId, reference })) {
      tell(await send(record, reference));
      await forgetRecord(record.id);
    }
  };
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    sendAll().catch((error: unknown) => {
      tell(error instanceof NoAnswer ? 'A record waits on this device; it goes as soon as the server answers.' : failureWords(error));
      if (error instanceof NoAnswer) timer = setTimeout(() => setRound(round + 1), AGAIN_MS);
    });
    return () => clearTimeout(timer);
  }, [round]);
  const add = async (files: readonly File[]) => {
    for (const file of files)
      await keepRecord({
        accountId,
        copyId: copyId ?? '',
        reference,
        specimen: Number(specimen),
        name: file.name,
        text: await file.text(),
      });
    setRound(round + 1);
  };
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
          onFiles={(files) => void add(files).catch((error: unknown) => tell(failureWords(error)))}
        />
      </details>
    </>
  );
}

/**
 * @returns what became of it, in words
 * @throws NoAnswer where it has to be sent again
 */
async function send({ id, name, specimen, text }: PullRecord, reference: string): Promise<string> {
  try {
    const { version } = await ask(submissionResponse, 'GET', `submissions/${reference}`);
    await ask(tracesResponse, 'POST', `submissions/${reference}/traces?specimen=${specimen}`, { body: text, version, key: id });
    return `${name} is kept as the record of specimen ${specimen}.`;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    if (error.status >= 500 || error.code === 'request/key-busy') throw new NoAnswer();
    const faults = error.faults.map(({ detail }) => detail).slice(0, 3);
    return [`${name} was not taken. ${failureWords(error)}`, ...faults].join(' ');
  }
}
