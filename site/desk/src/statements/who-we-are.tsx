import { houseStatementRequest, houseStatementResponse } from '../../../../api/contract/endpoints/statements.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';

export const PART_NAMES = {
  contact: 'contact',
  people: 'people',
  funding: 'funding',
  interests: 'interests',
  rightOfReply: 'right of reply',
} as const;

/** What readers learn of the house; complete before an edition is first published. */
export function WhoWeAre() {
  const house = useLoaded(() => ask(houseStatementResponse, 'GET', 'house-statement'));
  const said = house.answer;
  return (
    <>
      <p>
        Readers get this with the next release, and find what stood before in the releases before. An edition is first published once all of
        it is said.
      </p>
      <Loading of={house} />
      {said && (
        <>
          <p class="soft">
            {said.at === null ? 'Nothing is said yet.' : `Said on ${dayOf(said.at)}.`}
            {said.missing.length > 0 && ` Missing: ${said.missing.map((part) => PART_NAMES[part]).join(', ')}.`}
          </p>
          <Form
            schema={houseStatementRequest}
            submit="Say so from now on"
            keptAs="house"
            prepare={(entered) => ({ ...entered, people: peopleIn(entered['people'] as string) })}
            fields={[
              { name: 'contact', label: 'Contact', kind: 'words', value: said.contact ?? '', isOptional: true },
              {
                name: 'people',
                label: 'People, a line each',
                kind: 'words',
                value: said.people.map(({ name, does }) => `${name}: ${does}`).join('\n'),
                hint: 'For instance: E. Sallow: edits',
              },
              { name: 'funding', label: 'Who pays', kind: 'words', value: said.funding ?? '', isOptional: true },
              { name: 'interests', label: 'Ties to makers and sellers', kind: 'words', value: said.interests ?? '', isOptional: true },
              { name: 'rightOfReply', label: 'How a maker is heard', kind: 'words', value: said.rightOfReply ?? '', isOptional: true },
            ]}
            onSend={async (request) => {
              const { missing } = await ask(houseStatementResponse, 'POST', 'house-statement', { body: request });
              house.again();
              return missing.length === 0
                ? 'Said; nothing is missing.'
                : `Said; missing still: ${missing.map((part) => PART_NAMES[part]).join(', ')}.`;
            }}
          />
        </>
      )}
    </>
  );
}

/** "Name: what for", a line each. */
const peopleIn = (text: string) =>
  text
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => {
      const [name = '', ...does] = line.split(':');
      return { name: name.trim(), does: does.join(':').trim() };
    });
