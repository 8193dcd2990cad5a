import { testersResponse } from '../../../../api/contract/endpoints/accounts.js';
import { methodsResponse } from '../../../../api/contract/endpoints/methods.js';
import { roundRobinRequest, roundRobinResponse } from '../../../../api/contract/endpoints/round-robins.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { toSlug } from '../words/to-slug.js';
import { robinAt } from './round-robins.js';

/** Who pulls which spools by which method. */
export function NewRoundRobin() {
  const house = useLoaded(async () => {
    const [methods, testers] = await Promise.all([allPages(methodsResponse, 'catalogue/methods'), ask(testersResponse, 'GET', 'testers')]);
    return { methods: methods.filter(({ versions }) => versions.at(-1)?.yields.includes('breakingForce')), testers: testers.items };
  });
  if (!house.answer) return <Loading of={house} />;
  const { methods, testers } = house.answer;
  return (
    <details>
      <summary>Plan a round robin</summary>
      <Form
        schema={roundRobinRequest}
        submit="Plan it"
        keptAs="round-robin"
        fields={[
          { name: 'name', label: 'Name' },
          { name: 'words', label: 'What is looked for', kind: 'words' },
          { name: 'method', label: 'Method', kind: 'choice', options: methods.map(({ slug, name }) => [slug, name] as const) },
          { name: 'spools', label: 'Codes on the spools', hint: 'One a level, with spaces between.' },
          { name: 'specimens', label: 'Specimens of each spool and tester', kind: 'number', value: '5' },
          {
            name: 'testers',
            label: 'Who takes part',
            kind: 'several',
            options: testers.map(({ id, displayName }) => [id, displayName] as const),
          },
        ]}
        prepare={(entered) => ({
          ...entered,
          slug: toSlug(String(entered['name'])),
          spools: String(entered['spools'])
            .split(/[\s,;]+/)
            .filter((code) => code !== ''),
        })}
        onSend={async (request) => {
          await ask(roundRobinResponse, 'POST', 'round-robins', { body: request });
          window.location.assign(robinAt(request.slug));
          return 'Planned.';
        }}
      />
    </details>
  );
}
