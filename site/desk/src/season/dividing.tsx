import { useState } from 'preact/hooks';
import type { z } from 'zod';
import { CONSTRUCTIONS } from '../../../../api/contract/constructions.js';
import { linesResponse } from '../../../../api/contract/endpoints/catalogue.js';
import { editionResponse, plannedDivision } from '../../../../api/contract/endpoints/editions.js';
import type { PlannedDivision } from '../../../../api/contract/endpoints/editions.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useAct } from '../parts/use-act.js';
import { useLoaded } from '../parts/use-loaded.js';
import { toSlug } from '../words/to-slug.js';
import { loadChoices, schemeField, versionOf } from './edition-fields.js';

interface Props {
  readonly edition: z.infer<typeof editionResponse>;
  readonly onChanged: () => void;
}

/** What a planned edition compares by itself: put together here, and sent when there are at least two. */
export function Dividing({ edition: { slug, version, scheme, divisions = [] }, onChanged }: Props) {
  const choices = useLoaded(async () => ({ ...(await loadChoices()), lines: await allPages(linesResponse, 'catalogue/lines?limit=200') }));
  const [planned, setPlanned] = useState<readonly PlannedDivision[]>(divisions);
  const { said, act } = useAct(onChanged);
  if (!choices.answer) return <Loading of={choices} />;
  const { schemes, lines } = choices.answer;
  const materials = [...new Set(lines.map(({ material }) => material))].sort();
  const send = (body: object, words: string) => act(() => ask(editionResponse, 'PATCH', `editions/${slug}`, { body, version }), words);
  const whole = scheme ?? divisions[0]?.scheme;
  return (
    <>
      <p>Lines are compared within a division alone, each by its own scheme. An entry goes where the rule fits its line.</p>
      <ul class="rows">
        {planned.map((one) => (
          <li key={one.slug}>
            <p>
              {one.name}: {one.takes.materials.join(', ') || 'any material'}; {one.takes.constructions.join(', ') || 'any construction'}
              <br />
              <span class="soft">
                {schemes.find(({ slug: of }) => of === one.scheme.slug)?.name}, version {one.scheme.number}
              </span>
            </p>
            <button type="button" onClick={() => setPlanned(planned.filter((other) => other !== one))}>
              Take out<span class="only-heard"> {one.name}</span>
            </button>
          </li>
        ))}
      </ul>
      <Form
        schema={plannedDivision}
        submit="Add this division"
        keptAs={`division ${slug}`}
        isRepeated
        fields={[
          { name: 'name', label: 'Name of the division' },
          { name: 'materials', label: 'Materials; none for any', kind: 'several', options: materials.map((one) => [one, one] as const) },
          {
            name: 'constructions',
            label: 'Constructions; none for any',
            kind: 'several',
            options: CONSTRUCTIONS.map((one) => [one, one] as const),
          },
          schemeField(schemes, whole),
        ]}
        prepare={({ name, materials: of, constructions, scheme: by }) => ({
          slug: toSlug(String(name)),
          name,
          takes: { materials: of, constructions },
          scheme: versionOf(by),
        })}
        onSend={(division) => {
          setPlanned([...planned.filter((one) => one.slug !== division.slug), division]);
          return Promise.resolve(`${division.name} is added. Divide the edition when all are there.`);
        }}
      />
      <p class="acts">
        <button
          type="button"
          aria-disabled={planned.length < 2}
          onClick={() => planned.length > 1 && send({ divisions: planned }, 'Divided.')}
        >
          Divide the edition
        </button>
        {divisions.length > 0 && (
          <button type="button" onClick={() => send({ scheme: whole }, 'Everything is compared with everything.')}>
            Compare everything with everything
          </button>
        )}
      </p>
      <p role="status">{said}</p>
    </>
  );
}
