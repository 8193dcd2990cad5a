import { useEffect } from 'preact/hooks';
import { methodResponse, methodVersionResponse } from '../../../../api/contract/endpoints/methods.js';
import type { MethodVersion } from '../../../../api/contract/endpoints/methods.js';
import { ask } from '../http/ask.js';
import { Cautions } from '../parts/cautions.js';
import { Folded, goToPart } from '../parts/folded.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';
import { askedOf, methodAt } from '../words/method-help.js';

/** One version of a method, as the house put it on record; each thing that it asks has an address of its own. */
export function Method() {
  const query = new URLSearchParams(window.location.search);
  const at = `catalogue/methods/${encodeURIComponent(query.get('slug') ?? '')}`;
  const loaded = useLoaded(async () => {
    const [method, { versions }] = await Promise.all([
      ask(methodVersionResponse, 'GET', `${at}/versions/${encodeURIComponent(query.get('version') ?? '')}`),
      ask(methodResponse, 'GET', at),
    ]);
    return { method, versions };
  });
  const isThere = loaded.answer !== null;
  // The part that was asked for is there only now; it takes the focus, so that it is seen and heard.
  useEffect(() => goToPart(window.location.hash.slice(1)), [isThere]);
  if (!loaded.answer)
    return (
      <>
        <h1>Method</h1>
        <Loading of={loaded} />
      </>
    );
  const { method, versions } = loaded.answer;
  const { name, number, wording } = method;
  return (
    <>
      <h1>
        {name}, version {number}
      </h1>
      <p class="lede" id="purpose" tabIndex={-1}>
        {wording.purpose}
      </p>
      <Folded heading="Before you pull">
        <Cautions ofMethod={wording.cautions} />
      </Folded>
      <h2 id="steps" tabIndex={-1}>
        Steps
      </h2>
      <ol>
        {wording.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <AskedAndWhy method={method} />
      <Apparatus method={method} />
      {wording.formulae.length > 0 && (
        <Folded heading="Figures">
          {wording.formulae.map(({ figure, formula, where }) => (
            <section key={figure}>
              <h3>{figure}</h3>
              <p>
                {formula}
                <br />
                <span class="soft">{where}</span>
              </p>
            </section>
          ))}
        </Folded>
      )}
      <Folded heading="Versions" id="versions">
        <p>{wording.changes}</p>
        <ul class="rows">
          {versions.map((one) => (
            <li key={one.number}>
              <p>
                {one.number === number ? (
                  <strong>Version {one.number}</strong>
                ) : (
                  <a href={methodAt(method.slug, one.number)}>Version {one.number}</a>
                )}
              </p>
              <span class="soft">
                from {dayOf(one.effectiveFrom)}
                {one.effectiveUntil !== null && ` to ${dayOf(one.effectiveUntil)}`}
              </span>
            </li>
          ))}
        </ul>
        <p class="soft">{wording.sources.join('; ')}</p>
      </Folded>
    </>
  );
}

const AskedAndWhy = ({ method }: { method: MethodVersion }) => (
  <Folded heading="What it asks">
    <dl class="asked">
      {askedOf(method).map(({ part, what, limit, why }) => (
        <div key={part} id={part} tabIndex={-1}>
          <dt>{what}</dt>
          <dd>
            {limit}. <span class="soft">{why}</span>
          </dd>
        </div>
      ))}
    </dl>
  </Folded>
);

const Apparatus = ({ method: { wording, parameters } }: { method: MethodVersion }) => (
  <Folded heading="Apparatus">
    <ul>
      {wording.apparatus.map((one) => (
        <li key={one}>{one}</li>
      ))}
      {parameters.settings.map(({ name, value, unit }) => (
        <li key={name}>
          {name}: {value} {unit}
        </li>
      ))}
    </ul>
  </Folded>
);
