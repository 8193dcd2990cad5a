import { useContext } from 'preact/hooks';
import { z } from 'zod';
import { variantsResponse } from '../../../../api/contract/endpoints/catalogue.js';
import { editionChange, editionResponse, entriesRequest } from '../../../../api/contract/endpoints/editions.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useAct } from '../parts/use-act.js';
import { useLoaded } from '../parts/use-loaded.js';
import { Dividing } from './dividing.js';
import { editionFields, loadChoices, toEdition } from './edition-fields.js';
import { NameOf } from '../parts/variant-names.js';

type Edition = z.infer<typeof editionResponse>;

interface Props {
  readonly edition: Edition;
  readonly entered: readonly string[];
  readonly others: readonly string[];
  readonly onChanged: () => void;
}

/** Until it opens, everything of an edition can be changed, and the whole of it taken away. */
export function PlannedEdition({ edition, entered, others, onChanged }: Props) {
  return (
    <>
      <Entries edition={edition} entered={entered} onChanged={onChanged} />
      <details>
        <summary>Change what is planned</summary>
        <Changing edition={edition} others={others} onChanged={onChanged} />
      </details>
      <details>
        <summary>Compare some lines apart: divisions</summary>
        <Dividing key={edition.version} edition={edition} onChanged={onChanged} />
      </details>
      <details>
        <summary>Take the edition away</summary>
        <Deleting edition={edition} />
      </details>
    </>
  );
}

function Entries({ edition: { slug, version }, entered, onChanged }: Omit<Props, 'others'>) {
  const variants = useLoaded(() => allPages(variantsResponse, 'catalogue/variants?limit=200'));
  const open = variants.answer?.filter((variant) => !entered.includes(variant.slug) && variant.retired === null) ?? [];
  const { said, act } = useAct(onChanged);
  const nameOf = useContext(NameOf);
  return (
    <section>
      <h2>Entries</h2>
      <Loading of={variants} />
      <p role="status">{said}</p>
      <ul class="rows">
        {entered.map((variant) => (
          <li key={variant}>
            <p>{nameOf(variant)}</p>
            <button
              type="button"
              onClick={() =>
                act(() => ask(z.null(), 'DELETE', `editions/${slug}/entries/${variant}`, { version }), `${nameOf(variant)} is out again.`)
              }
            >
              Take out<span class="only-heard"> {nameOf(variant)}</span>
            </button>
          </li>
        ))}
      </ul>
      {variants.answer?.length === 0 && (
        <p>
          The catalogue is empty. <a href="/desk/catalogue/">Put lines into it</a>
        </p>
      )}
      {open.length > 0 && (
        <Form
          schema={entriesRequest}
          submit="Enter these"
          keptAs={`entries ${slug}`}
          fields={[
            {
              name: 'variants',
              label: 'Variants that take part',
              kind: 'several',
              options: open.map((one) => [one.slug, nameOf(one.slug)] as const),
            },
          ]}
          onSend={async (request) => {
            await ask(editionResponse, 'POST', `editions/${slug}/entries`, { body: request });
            onChanged();
            return `${request.variants.length} entered.`;
          }}
        />
      )}
    </section>
  );
}

function Changing({ edition, others, onChanged }: Omit<Props, 'entered'>) {
  const choices = useLoaded(loadChoices);
  if (!choices.answer) return <Loading of={choices} />;
  return (
    <Form
      schema={editionChange}
      submit="Change it"
      keptAs={`edition ${edition.slug}`}
      fields={editionFields(choices.answer, others, edition)}
      prepare={toEdition}
      onSend={async (request) => {
        await ask(editionResponse, 'PATCH', `editions/${edition.slug}`, { body: request, version: edition.version });
        onChanged();
        return 'Changed.';
      }}
    />
  );
}

function Deleting({ edition: { slug, name, version } }: { edition: Edition }) {
  const { said, act } = useAct(() => window.location.assign('/desk/season/'));
  return (
    <>
      <p>Its entries and dates go with it. Methods, scheme and catalogue stay.</p>
      <button type="button" onClick={() => act(() => ask(z.null(), 'DELETE', `editions/${slug}`, { version }), '')}>
        Take {name} away
      </button>
      <p role="status">{said}</p>
    </>
  );
}
