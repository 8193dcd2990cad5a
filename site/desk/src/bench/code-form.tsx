import { useRef, useState } from 'preact/hooks';
import type { z } from 'zod';
import { isBlindCode, normaliseBlindCode } from '../../../../api/contract/blind-code.js';
import type { ownAssignmentsResponse } from '../../../../api/contract/endpoints/assignments.js';
import type { MethodResponse } from '../../../../api/contract/endpoints/methods.js';
import type { SubmissionSummary } from '../../../../api/contract/endpoints/submissions.js';
import { keep, kept } from '../parts/on-device.js';
import { Scanner } from './scanner.js';

/** A bench pulls one spool after another by the same method. */
const LAST = ['context', 'method'] as const;

interface Props {
  readonly accountId: string;
  readonly methods: readonly MethodResponse[];
  readonly begun: readonly SubmissionSummary[];
  readonly asked: z.infer<typeof ownAssignmentsResponse>['items'];
  readonly day: string;
}

/** A code and a method lead to the sheet. Offered is what the spool was asked for, else what was pulled last; nothing where neither is known. */
export function CodeForm({ accountId, methods, begun, asked, day }: Props) {
  const [code, setCode] = useState('');
  const [chosen, setChosen] = useState<string | null>(null);
  const [fault, setFault] = useState({ of: '', words: '' });
  const choice = useRef<HTMLSelectElement>(null);
  const methodFor = (text: string): string => {
    const wanted = asked.find(({ spool, handedIn }) => spool === normaliseBlindCode(text) && handedIn === null)?.method;
    const known = chosen ?? wanted ?? (methods.length === 1 ? methods[0]?.slug : kept(accountId, ...LAST));
    return methods.find(({ slug }) => slug === known)?.slug ?? '';
  };
  const begin = (text: string) => {
    const read = normaliseBlindCode(text);
    const method = methodFor(text);
    if (!isBlindCode(read)) {
      const words = `“${read}” is no code: seven characters whose last one checks the others. Read the label again; there is no 0, O, 1 or I.`;
      setFault({ of: 'code', words });
      return;
    }
    if (method === '') {
      setFault({ of: 'method', words: 'Choose the method by which it is pulled.' });
      choice.current?.focus();
      return;
    }
    keep(accountId, ...LAST, method);
    const same = begun.find((draft) => draft.spool === read && draft.method.slug === method && draft.benchDay === day);
    window.location.assign(same ? `/desk/enter/?draft=${same.reference}` : `/desk/enter/?spool=${read}&method=${method}`);
  };
  const scanned = (text: string) => {
    setCode(text);
    begin(text);
  };
  return (
    <form
      class="form"
      onSubmit={(event) => {
        event.preventDefault();
        begin(code);
      }}
      noValidate
    >
      <div class="field">
        <label for="code">Code on the spool</label>
        <input
          id="code"
          class="reading code"
          value={code}
          autocomplete="off"
          autocapitalize="characters"
          spellcheck={false}
          aria-describedby="code-fault"
          aria-invalid={fault.of === 'code'}
          onInput={(event) => {
            setCode(event.currentTarget.value);
            setFault({ of: '', words: '' });
          }}
        />
        <Scanner onText={scanned} />
      </div>
      <div class="field">
        <label for="method">Method</label>
        <select
          ref={choice}
          id="method"
          value={methodFor(code)}
          aria-describedby="code-fault"
          aria-invalid={fault.of === 'method'}
          onChange={(event) => {
            setChosen(event.currentTarget.value);
            setFault({ of: '', words: '' });
          }}
        >
          <option value="">not chosen yet</option>
          {methods.map(({ slug, name }) => (
            <option key={slug} value={slug}>
              {name}
            </option>
          ))}
        </select>
      </div>
      <div class="send">
        <button type="submit" class="main">
          Begin
        </button>
        <p id="code-fault" role="alert" class="signal">
          {fault.words}
        </p>
      </div>
    </form>
  );
}
