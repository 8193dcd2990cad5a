import { useState } from 'preact/hooks';
import { interestRequest, interestResponse, interestsResponse } from '../../../../api/contract/endpoints/accounts.js';
import { makerResponse, makersResponse } from '../../../../api/contract/endpoints/catalogue.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';

/** Ties to makers: those declared, by name, and a further one. */
export function Interests() {
  const interests = useLoaded(async () => {
    const { items } = await ask(interestsResponse, 'GET', 'interests');
    const nameOf = async (slug: string) => (await ask(makerResponse, 'GET', `catalogue/makers/${encodeURIComponent(slug)}`)).name;
    return Promise.all(items.map(async (item) => ({ ...item, name: await nameOf(item.maker) })));
  });
  const [isDeclaring, setIsDeclaring] = useState(false);
  return (
    <section>
      <h2>Ties to makers</h2>
      <p>
        Whoever works for a maker, or is paid or supplied by one, says so. It is no fault; it keeps you from judging that maker’s lines.
      </p>
      <Loading of={interests} />
      <ul class="rows">
        {interests.answer?.map(({ name, words, declaredAt }) => (
          <li key={name + declaredAt}>
            <p>
              {name}: {words}
            </p>
            <span class="soft">{dayOf(declaredAt)}</span>
          </li>
        ))}
      </ul>
      {interests.answer?.length === 0 && <p class="soft">You have declared none.</p>}
      <details onToggle={(event) => setIsDeclaring(event.currentTarget.open)}>
        <summary>Declare a tie: the makers of the house are listed</summary>
        {isDeclaring && <DeclareTie onDeclared={interests.again} />}
      </details>
    </section>
  );
}

/** Names come to a tester's device when they are asked for, and not before. */
function DeclareTie({ onDeclared }: { onDeclared: () => void }) {
  const makers = useLoaded(() => allPages(makersResponse, 'catalogue/makers?limit=200'));
  if (!makers.answer) return <Loading of={makers} />;
  if (makers.answer.length === 0) return <p>The catalogue has no maker yet.</p>;
  const nameOf = (slug: string) => makers.answer?.find((one) => one.slug === slug)?.name ?? slug;
  return (
    <Form
      schema={interestRequest}
      submit="Declare a tie"
      keptAs="interest"
      isRepeated
      fields={[
        {
          name: 'maker',
          label: 'Maker',
          kind: 'choice',
          options: [['', 'choose'], ...makers.answer.map(({ slug, name }) => [slug, name] as const)],
          hint: 'One that is not listed has no line here.',
        },
        { name: 'words', label: 'The tie, in words' },
      ]}
      prepare={({ maker, ...entered }) => ({ ...entered, ...(maker !== '' && { maker }) })}
      onSend={async (request) => {
        const { maker } = await ask(interestResponse, 'POST', 'interests', { body: request });
        onDeclared();
        return `Your tie to ${nameOf(maker)} is on record.`;
      }}
    />
  );
}
