import { drawRequest, retestsResponse, USUAL_DRAW_PERCENT } from '../../../../api/contract/endpoints/retests.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useMethodNames } from '../parts/use-method-names.js';
import { useLoaded } from '../parts/use-loaded.js';

/** Results drawn by lot, to be tested again under new codes: whoever draws cannot choose them. */
export function Retests({ slug, canDraw }: { slug: string; canDraw: boolean }) {
  const nameOf = useMethodNames();
  const drawn = useLoaded(() => ask(retestsResponse, 'GET', `editions/${slug}/retests`), [slug]);
  const items = drawn.answer?.items ?? [];
  const done = items.filter(({ isDone }) => isDone).length;
  return (
    <details>
      <summary>Tested again, blind</summary>
      <Loading of={drawn} />
      {drawn.answer && drawn.answer.percent !== null && (
        <p>
          {drawn.answer.percent} % were drawn: {items.length} results, {done} of them tested again. Give each spool, under its new code, to
          a tester who did not pull it before.
        </p>
      )}
      <ul class="rows">
        {items.map(({ original, spool, method, isDone }) => (
          <li key={spool + original}>
            <p>
              <span class="code">{spool}</span> {nameOf(method)} <span class="soft">again, after {original}</span>
            </p>
            <span class={isDone ? '' : 'signal'}>{isDone ? 'tested again' : 'not yet'}</span>
          </li>
        ))}
      </ul>
      {drawn.answer?.percent === null && canDraw && (
        <>
          <p>A share of the accepted results is drawn by a lot that anybody can draw again. It can be done once.</p>
          <Form
            schema={drawRequest}
            submit="Draw"
            fields={[{ name: 'percent', label: 'Share of the accepted results, %', kind: 'number', value: String(USUAL_DRAW_PERCENT) }]}
            onSend={async (request) => {
              await ask(retestsResponse, 'POST', `editions/${slug}/retests`, { body: request });
              drawn.again();
              return 'Drawn.';
            }}
          />
        </>
      )}
    </details>
  );
}
