import { useContext } from 'preact/hooks';
import type { z } from 'zod';
import { variantsResponse } from '../../../../api/contract/endpoints/catalogue.js';
import { amendmentRequest, editionResponse } from '../../../../api/contract/endpoints/editions.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';
import { loadChoices, methodsField, toEdition } from './edition-fields.js';
import { NameOf } from '../parts/variant-names.js';

interface Props {
  readonly edition: z.infer<typeof editionResponse>;
  readonly entered: readonly string[];
  readonly onAmended: () => void;
}

/** What an open edition can still take, each with the reason that readers see. */
export function Amending({ edition, entered, onAmended }: Props) {
  const { slug, amendments, version, methods: pinned } = edition;
  const nameOf = useContext(NameOf);
  const choices = useLoaded(async () => {
    const [house, variants] = await Promise.all([loadChoices(), allPages(variantsResponse, 'catalogue/variants?limit=200')]);
    return { ...house, variants: variants.filter((one) => !entered.includes(one.slug) && one.retired === null) };
  });
  return (
    <section>
      {amendments.length > 0 && (
        <>
          <h2>What it took since it opened</h2>
          <ul class="rows">
            {amendments.map(({ on, reason, variants, methods, closesOn }) => (
              <li key={on + reason}>
                <p>
                  {[
                    ...variants.map(nameOf),
                    ...methods.map((method) => `${nameOf(method.slug)}, version ${method.number}`),
                    ...(closesOn ? [`closes on ${dayOf(closesOn.after)} instead of ${dayOf(closesOn.before)}`] : []),
                  ].join('; ')}
                  <br />
                  <span class="soft">{reason}</span>
                </p>
                <span class="soft">{dayOf(on)}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      <details>
        <summary>A further entry, a method that was forgotten, a later closing day</summary>
        <Loading of={choices} />
        {choices.answer && (
          <Form
            schema={amendmentRequest}
            submit="Take these in"
            keptAs={`amendment ${slug}`}
            fields={[
              {
                name: 'variants',
                label: 'Further entries',
                kind: 'several',
                options: choices.answer.variants.map((one) => [one.slug, nameOf(one.slug)] as const),
              },
              methodsField(
                choices.answer.methods.filter((method) => !pinned.some((one) => one.slug === method.slug)),
                [],
                'Methods that were forgotten',
              ),
              { name: 'closesOn', label: 'Later closing day', kind: 'date' },
              { name: 'reason', label: 'Why, in words that readers see', kind: 'words' },
            ]}
            prepare={(entered) => withoutEmpty(toEdition(entered))}
            onSend={async (request) => {
              await ask(editionResponse, 'POST', `editions/${slug}/amendments`, { body: request, version });
              onAmended();
              return 'Taken in, with the reason.';
            }}
          />
        )}
      </details>
    </section>
  );
}

const withoutEmpty = (entered: Record<string, unknown>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(entered).filter(([, value]) => value !== '' && !(Array.isArray(value) && value.length === 0)));
