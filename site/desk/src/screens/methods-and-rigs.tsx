import { useState } from 'preact/hooks';
import { controlLineRequest, controlLinesResponse } from '../../../../api/contract/endpoints/control-pulls.js';
import { methodsResponse, methodResponse, methodVersionResponse } from '../../../../api/contract/endpoints/methods.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import { Instruments } from '../methods/instruments.js';
import { NewVersion, versionAt } from '../methods/new-version.js';
import { METHOD_STARTERS } from '../methods/method-starters.js';
import type { MethodStarter } from '../methods/method-starters.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { FoldedForm } from '../parts/folded-form.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';
import { methodAt } from '../words/method-help.js';
import { failureWords } from '../words/failure-words.js';

export function MethodsAndRigs() {
  const query = new URLSearchParams(window.location.search);
  for (const wish of ['next', 'like'] as const) {
    const slug = query.get(wish);
    if (slug !== null) return <NewVersion wish={wish} slug={slug} />;
  }
  return (
    <>
      <h1>Methods and instruments</h1>
      <Instruments />
      <Methods />
      <ControlLines />
    </>
  );
}

function Methods() {
  const methods = useLoaded(() => allPages(methodsResponse, 'catalogue/methods'));
  const [said, setSaid] = useState('');
  const missing = METHOD_STARTERS.filter(
    ({ slug }) => methods.answer?.some((one) => one.slug === slug && one.versions.length > 0) === false,
  );
  const begin = async (starter: MethodStarter, effectiveFrom: string) => {
    try {
      if (!methods.answer?.some(({ slug }) => slug === starter.slug))
        await ask(methodResponse, 'POST', 'catalogue/methods', { body: { slug: starter.slug, name: starter.name } });
      const body = { ...starter.version, number: 1, effectiveFrom, effectiveUntil: null, isComparableWithPrevious: false };
      await ask(methodVersionResponse, 'POST', `catalogue/methods/${starter.slug}/versions`, { body });
      setSaid(`${starter.name}, version 1, is in force from ${dayOf(effectiveFrom)}.`);
      methods.again();
    } catch (error) {
      setSaid(failureWords(error));
    }
  };
  const [from, setFrom] = useState(`${new Date().getFullYear()}-01-01`);
  return (
    <>
      <h2>Methods</h2>
      <Loading of={methods} />
      <ul class="rows">
        {methods.answer?.map(({ slug, name, versions }) => (
          <li key={slug}>
            <p>{versions.length === 0 ? name : <a href={methodAt(slug, versions.at(-1)?.number ?? 1)}>{name}</a>}</p>
            <span class="soft">
              {versions.map(({ number, effectiveFrom }) => `version ${number} from ${dayOf(effectiveFrom)}`).join(', ')}
              {versions.length > 0 && (
                <>
                  ;{' '}
                  <a href={versionAt('next', slug)}>
                    write the next<span class="only-heard"> version of {name}</span>
                  </a>
                  ,{' '}
                  <a href={versionAt('like', slug)}>
                    another like it<span class="only-heard">: like {name}</span>
                  </a>
                </>
              )}
            </span>
          </li>
        ))}
      </ul>
      {missing.length > 0 && (
        <FoldedForm what="Begin with a method from the starters" count={methods.answer?.length ?? 0}>
          <p>Their wording is general; a version of your own replaces it later. A version never changes once it is on record.</p>
          <label class="field narrow">
            In force from
            <input type="date" value={from} onInput={(event) => setFrom(event.currentTarget.value)} />
          </label>
          <ul class="rows">
            {missing.map((starter) => (
              <li key={starter.slug}>
                <p>
                  <strong>{starter.name}</strong>. {starter.version.wording.purpose}
                </p>
                <button type="button" onClick={() => void begin(starter, from)}>
                  Take {starter.name.toLowerCase()}
                </button>
              </li>
            ))}
          </ul>
        </FoldedForm>
      )}
      <p role="status">{said}</p>
    </>
  );
}

function ControlLines() {
  const lines = useLoaded(() => ask(controlLinesResponse, 'GET', 'control-lines'));
  return (
    <>
      <h2>Control lines</h2>
      <p>The house’s reference spool; three pulls on it begin a bench day and say whether the rig is in control.</p>
      <Loading of={lines} />
      <ul class="rows">
        {lines.answer?.items.map(({ code, name, lot }) => (
          <li key={code}>
            <p>
              <span class="code">{code}</span> {name}
            </p>
            <span class="soft">lot {lot}</span>
          </li>
        ))}
      </ul>
      {lines.answer && (
        <FoldedForm what="Add a control line" count={lines.answer.items.length}>
          <Form
            schema={controlLineRequest}
            submit="Add the control line"
            keptAs="control-line"
            isRepeated
            fields={[
              { name: 'code', label: 'Code', hint: 'For instance C1' },
              { name: 'name', label: 'What the bench calls it' },
              { name: 'lot', label: 'Lot on its label' },
              { name: 'words', label: 'What it is, and how it is kept', kind: 'words' },
            ]}
            onSend={async (request) => {
              await ask(controlLinesResponse, 'POST', 'control-lines', { body: request });
              lines.again();
              return `${request.code} is on record.`;
            }}
          />
        </FoldedForm>
      )}
    </>
  );
}
