import { editionRequest, editionResponse } from '../../../../api/contract/endpoints/editions.js';
import { schemeRequest, schemeResponse } from '../../../../api/contract/endpoints/schemes.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { ToAdd } from '../parts/to-add.js';
import { useLoaded } from '../parts/use-loaded.js';
import { toSlug } from '../words/to-slug.js';
import { editionFields, loadChoices, toEdition } from './edition-fields.js';
import { CATEGORY_TEMPLATES, schemeFrom } from './scheme-templates.js';

interface Props {
  readonly editions: readonly string[];
  readonly onPlanned: () => void;
}

/** A scheme from a template, and an edition that is ranked by it. */
export function NewEdition({ editions, onPlanned }: Props) {
  const house = useLoaded(loadChoices);
  if (!house.answer) return <Loading of={house} />;
  const { schemes, methods } = house.answer;
  const known = CATEGORY_TEMPLATES.filter(({ method, section }) =>
    [method, ...(section ? [section.method] : [])].every((needed) => methods.some(({ slug }) => slug === needed)),
  );
  return (
    <>
      <h2>Make a scheme</h2>
      {known.length === 0 ? (
        <p>
          A scheme ranks what methods measure. <a href="/desk/methods/">Put methods on record first</a>
        </p>
      ) : (
        <ToAdd what="From the categories that you test" count={schemes.length}>
          <Form
            schema={schemeRequest}
            submit="Make the scheme"
            fields={[
              { name: 'name', label: 'Name of the scheme' },
              {
                name: 'codes',
                label: 'Categories, each with the same weight',
                kind: 'several',
                options: known.map(({ code, name }) => [code, name] as const),
              },
            ]}
            prepare={({ name, codes }) => schemeFrom(toSlug(String(name)), String(name), codes as string[])}
            onSend={async (request) => {
              await ask(schemeResponse, 'POST', 'schemes', { body: request });
              house.again();
              return 'The scheme is on record.';
            }}
          />
        </ToAdd>
      )}
      <h2>Plan an edition</h2>
      {schemes.length === 0 ? (
        <p class="soft">It needs a scheme.</p>
      ) : (
        <ToAdd what="Name, scheme, days and methods" count={editions.length}>
          <Form
            schema={editionRequest}
            submit="Plan the edition"
            fields={[
              { name: 'slug', label: 'Short name', hint: 'For addresses, usually the year.' },
              ...editionFields(house.answer, editions),
            ]}
            prepare={toEdition}
            onSend={async (request) => {
              const { slug } = await ask(editionResponse, 'POST', 'editions', { body: request });
              onPlanned();
              window.location.assign(`/desk/season/?edition=${slug}`);
              return 'Planned.';
            }}
          />
        </ToAdd>
      )}
    </>
  );
}
