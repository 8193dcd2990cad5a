import { useRef, useState } from 'preact/hooks';
import { isBlindCode, normaliseBlindCode } from '../../../../api/contract/blind-code.js';
import type { MethodResponse } from '../../../../api/contract/endpoints/methods.js';
import { blindSpoolsResponse } from '../../../../api/contract/endpoints/spools.js';
import { submissionsResponse, type SubmissionSummary } from '../../../../api/contract/endpoints/submissions.js';
import { allPages } from '../http/all-pages.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { textIn } from '../parts/text-in.js';
import { Asked } from './asked.js';
import type { BenchContext } from './bench-context.js';
import { copiesOf } from './device-copy.js';
import { Scanner } from './scanner.js';
import { isBlank } from './sheet.js';

const AT_ONCE = 200;
/** A bench pulls one spool after another by the same method. */
const LAST_METHOD = 'desk.method';

interface Props {
  readonly context: BenchContext;
  readonly methods: readonly MethodResponse[];
  readonly accountId: string;
}

/** A code is scanned or typed and its check character looked at before anything is asked; below, what is begun and what is done. */
export function WorkList({ context, methods, accountId }: Props) {
  const work = useLoaded(async () => {
    const [spools, own] = await Promise.all([
      allPages(blindSpoolsResponse, `spools?limit=${AT_ONCE}`),
      allPages(submissionsResponse, `submissions?edition=${context.edition}&limit=${AT_ONCE}`),
    ]);
    return { spools, own };
  }, [context.edition]);
  const current = methods.filter(({ versions }) =>
    versions.some((one) => one.effectiveFrom <= context.benchDay && (one.effectiveUntil ?? '9999') >= context.benchDay),
  );
  const drafts = work.answer?.own.filter(({ state }) => state === 'draft') ?? [];
  const onDevice = copiesOf(accountId).filter(({ reference, sheet }) => reference === null && !isBlank(sheet));
  const nameOf = (slug: string) => methods.find((method) => method.slug === slug)?.name ?? slug;
  return (
    <>
      <CodeForm methods={current} begun={drafts} day={context.benchDay} />
      <Asked nameOf={nameOf} />
      <Loading of={work} />
      {drafts.length + onDevice.length > 0 && <h3>Begun</h3>}
      <ul class="rows">
        {onDevice.map(({ id, sheet }) => (
          <li key={id}>
            <p>
              <span class="code">{sheet.spool}</span> {nameOf(sheet.method)} <span class="soft">on this device alone so far</span>
            </p>
            <a href={`/desk/enter/?copy=${id}`}>Go on</a>
          </li>
        ))}
        {drafts.map(({ reference, spool, method }) => (
          <li key={reference}>
            <p>
              <span class="code">{spool}</span> {nameOf(method.slug)}
            </p>
            <a href={`/desk/enter/?draft=${reference}`}>Go on</a>
          </li>
        ))}
      </ul>
      {work.answer?.spools.length === 0 && <p>Nothing begun yet: take a spool from the shelf and read the code on it.</p>}
      {work.answer && work.answer.spools.length > 0 && (
        <details>
          <summary>Your {work.answer.spools.length} spools, and what you have handed in of each</summary>
          <ul class="rows">
            {work.answer.spools.map(({ blindCode, lengthM }) => {
              const done = work.answer?.own.filter(({ spool, state }) => spool === blindCode && state !== 'draft') ?? [];
              return (
                <li key={blindCode}>
                  <p>
                    <span class="code">{blindCode}</span> <span class="soft">{lengthM !== null && `${lengthM} m`}</span>
                  </p>
                  <span class="soft">{done.length === 0 ? 'nothing yet' : done.map(({ method }) => nameOf(method.slug)).join(', ')}</span>
                </li>
              );
            })}
          </ul>
        </details>
      )}
    </>
  );
}

interface CodeFormProps {
  readonly methods: readonly MethodResponse[];
  readonly begun: readonly SubmissionSummary[];
  readonly day: string;
}

function CodeForm({ methods, begun, day }: CodeFormProps) {
  const [fault, setFault] = useState('');
  const form = useRef<HTMLFormElement>(null);
  const begin = () => {
    if (!form.current) return;
    const entered = new FormData(form.current);
    const code = normaliseBlindCode(textIn(entered, 'code'));
    if (!isBlindCode(code)) {
      setFault(`“${code}” is no code: seven characters whose last one checks the others. Read the label again; there is no 0, O, 1 or I.`);
      return;
    }
    const method = textIn(entered, 'method');
    localStorage.setItem(LAST_METHOD, method);
    const same = begun.find((draft) => draft.spool === code && draft.method.slug === method && draft.benchDay === day);
    window.location.assign(same ? `/desk/enter/?draft=${same.reference}` : `/desk/enter/?spool=${code}&method=${method}`);
  };
  const scanned = (text: string) => {
    const field = form.current?.querySelector<HTMLInputElement>('#code');
    if (!field) return;
    field.value = text;
    begin();
  };
  return (
    <form
      ref={form}
      class="form"
      onSubmit={(event) => {
        event.preventDefault();
        begin();
      }}
      noValidate
    >
      <div class="field">
        <label for="code">Code on the spool</label>
        <input
          id="code"
          name="code"
          class="reading code"
          autocomplete="off"
          autocapitalize="characters"
          spellcheck={false}
          aria-describedby="code-fault"
          aria-invalid={fault !== ''}
          onInput={() => setFault('')}
        />
        <Scanner onText={scanned} />
      </div>
      <div class="field">
        <label for="method">Method</label>
        <select id="method" name="method">
          {methods.map(({ slug, name }) => (
            <option key={slug} value={slug} selected={slug === localStorage.getItem(LAST_METHOD)}>
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
          {fault}
        </p>
      </div>
    </form>
  );
}
