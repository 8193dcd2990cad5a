import { editionRequest, editionResponse } from '../../../../api/contract/endpoints/editions.js';
import { methodVersionResponse } from '../../../../api/contract/endpoints/methods.js';
import { schemeRequest, schemeResponse } from '../../../../api/contract/endpoints/schemes.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { FoldedForm } from '../parts/folded-form.js';
import { useLoaded } from '../parts/use-loaded.js';
import { toSlug } from '../words/to-slug.js';
import { editionFields, loadChoices, toEdition } from './edition-fields.js';
import { categoryChoices, schemeFrom } from './category-choices.js';

interface Props {
  readonly editions: readonly string[];
  readonly onPlanned: () => void;
}

/** What an edition is put together from, and what its methods yield now. */
async function loadHouse() {
  const choices = await loadChoices();
  const newest = choices.methods.flatMap(({ slug, versions }) => versions.slice(-1).map(({ number }) => `${slug}/versions/${number}`));
  const versions = await Promise.all(newest.map((at) => ask(methodVersionResponse, 'GET', `catalogue/methods/${at}`)));
  return { ...choices, categories: categoryChoices(versions) };
}

/** A scheme of what the house's methods yield, and an edition that is ranked by it. */
export function NewEdition({ editions, onPlanned }: Props) {
  const house = useLoaded(loadHouse);
  if (!house.answer) return <Loading of={house} />;
  const { schemes, categories } = house.answer;
  return (
    <>
      <h2>Make a scheme</h2>
      {categories.length === 0 ? (
        <p>
          A scheme ranks what methods measure. <a href="/desk/methods/">Put methods on record first</a>
        </p>
      ) : (
        <FoldedForm what="From the categories that you test" count={schemes.length}>
          <Form
            schema={schemeRequest}
            submit="Make the scheme"
            keptAs="scheme"
            fields={[
              { name: 'name', label: 'Name of the scheme' },
              {
                name: 'rules/categories',
                label: 'Categories, each with the same weight',
                kind: 'several',
                options: categories.map(({ code, name }) => [code, name] as const),
              },
            ]}
            prepare={({ name, rules }) =>
              schemeFrom(
                toSlug(String(name)),
                String(name),
                categories.filter(({ code }) => (rules as { categories: string[] }).categories.includes(code)),
              )
            }
            onSend={async (request) => {
              await ask(schemeResponse, 'POST', 'schemes', { body: request });
              house.again();
              return 'The scheme is on record.';
            }}
          />
        </FoldedForm>
      )}
      <h2>Plan an edition</h2>
      {schemes.length === 0 ? (
        <p class="soft">It needs a scheme.</p>
      ) : (
        <FoldedForm what="Name, scheme, days and methods" count={editions.length}>
          <Form
            schema={editionRequest}
            submit="Plan the edition"
            keptAs="edition"
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
        </FoldedForm>
      )}
    </>
  );
}
