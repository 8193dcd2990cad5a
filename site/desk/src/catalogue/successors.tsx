import { useState } from 'preact/hooks';
import { successionRequest, successionsResponse } from '../../../../api/contract/endpoints/catalogue.js';
import type { SuccessionRequest } from '../../../../api/contract/endpoints/catalogue.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { namesOfLines, variantNames } from '../parts/variant-names.js';
import type { CatalogueRows } from '../parts/variant-names.js';
import { dayOf } from '../words/day-of.js';

type Kind = SuccessionRequest['kind'];

/** What took whose place: the address of the one leads on to the other, on every page and for every program. */
export function Successors({ rows }: { rows: CatalogueRows }) {
  const successions = useLoaded(() => ask(successionsResponse, 'GET', 'catalogue/successions'));
  const [kind, setKind] = useState<Kind>('variant');
  const names: Readonly<Record<Kind, ReadonlyMap<string, string>>> = {
    maker: new Map(rows.makers.map(({ slug, name }) => [slug, name])),
    line: namesOfLines(rows),
    variant: variantNames(rows),
  };
  const nameOf = (one: Kind, slug: string) => names[one].get(slug) ?? slug;
  const options = [['', 'Choose'] as const, ...names[kind]];
  return (
    <details>
      <summary>One that goes on as another</summary>
      <p>
        Where a maker sells the same line under another name, or two rows turned out to be one: the address of the old one stays and leads
        on for ever. A typing mistake is corrected instead.
      </p>
      <Loading of={successions} />
      <ul class="rows">
        {successions.answer?.items.map((one) => (
          <li key={one.kind + one.slug}>
            <p>
              {nameOf(one.kind, one.slug)} goes on as {nameOf(one.kind, one.successor)} <span class="soft">{one.reason}</span>
            </p>
            <span class="soft">{dayOf(one.at)}</span>
          </li>
        ))}
      </ul>
      <label class="field narrow">
        What goes on
        <select value={kind} onChange={(event) => setKind(event.currentTarget.value as Kind)}>
          <option value="variant">A variant</option>
          <option value="line">A line</option>
          <option value="maker">A maker</option>
        </select>
      </label>
      <Form
        key={kind}
        schema={successionRequest}
        submit="Let it lead on"
        keptAs={`successor of a ${kind}`}
        isRepeated
        fixed={{ kind }}
        fields={[
          { name: 'slug', label: 'The one that was', kind: 'choice', options },
          { name: 'successor', label: 'What takes its place', kind: 'choice', options },
          { name: 'reason', label: 'Why', kind: 'words' },
        ]}
        onSend={async (request) => {
          await ask(successionsResponse, 'POST', 'catalogue/successions', { body: request });
          successions.again();
          return `${nameOf(kind, request.slug)} goes on as ${nameOf(kind, request.successor)}.`;
        }}
      />
    </details>
  );
}
