import { CONSTRUCTIONS } from '../../../../api/contract/constructions.js';
import { remarkRequest, remarkResponse, remarkSuccessorRequest, remarksResponse } from '../../../../api/contract/endpoints/statements.js';
import { lineName } from '../../../../api/contract/line-name.js';
import { workingEditionsResponse } from '../../../../api/contract/endpoints/editions.js';
import type { RemarkResponse } from '../../../../api/contract/endpoints/statements.js';
import { ask } from '../http/ask.js';
import { loadCatalogue, variantNames } from '../parts/variant-names.js';
import type { CatalogueRows } from '../parts/variant-names.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { FoldedForm } from '../parts/folded-form.js';
import { useLoaded } from '../parts/use-loaded.js';
import { WithReason } from '../parts/with-reason.js';
import { dayOf } from '../words/day-of.js';
import { CONSTRUCTION_WORDS } from '../words/kind-words.js';

/** Caveats that no figure settles, and replies of makers. */
export function Remarks() {
  const catalogue = useLoaded(async () => aboutChoices(await loadCatalogue()));
  const editions = useLoaded(async () => (await ask(workingEditionsResponse, 'GET', 'bench/editions')).items);
  const remarks = useLoaded(() => ask(remarksResponse, 'GET', 'remarks'));
  const send = async (request: object) => {
    await ask(remarkResponse, 'POST', 'remarks', { body: request });
    remarks.again();
    return 'It goes into the next release.';
  };
  const words = { name: 'words', label: 'In words that readers see', kind: 'words' } as const;
  return (
    <>
      <h2>Caveats and replies</h2>
      <p>
        They stand beside the figures from the next release on. What was said is never changed: it is ended or said otherwise, with a
        reason.
      </p>
      <Loading of={remarks} />
      {remarks.answer?.items.length === 0 && <p class="soft">There are none.</p>}
      <ul class="rows">
        {remarks.answer?.items.map((remark) => (
          <Row
            key={remark.id}
            {...remark}
            called={catalogue.answer?.find(([about]) => about === aboutAs(remark.about))?.[1] ?? ''}
            onChanged={remarks.again}
          />
        ))}
      </ul>
      {remarks.answer && catalogue.answer && editions.answer && (
        <>
          <FoldedForm what="A caveat" count={remarks.answer.items.length}>
            <Form
              schema={remarkRequest}
              submit="Add the caveat"
              keptAs="caveat"
              isRepeated
              fixed={{ kind: 'caveat' }}
              fields={[{ name: 'about', label: 'Of', kind: 'choice', options: catalogue.answer }, words]}
              prepare={({ about, ...entered }) => {
                const [kind, slug] = String(about).split(' ');
                return { ...entered, about: { kind, slug } };
              }}
              onSend={send}
            />
          </FoldedForm>
          <FoldedForm what="A reply of a maker" count={remarks.answer.items.length}>
            <Form
              schema={remarkRequest}
              submit="Enter the reply"
              keptAs="reply"
              isRepeated
              fixed={{ kind: 'reply' }}
              fields={[
                {
                  name: 'variant',
                  label: 'Variant',
                  kind: 'choice',
                  options: catalogue.answer.flatMap(([about, name]) => {
                    const [kind, slug = ''] = about.split(' ');
                    return kind === 'variant' ? [[slug, name] as const] : [];
                  }),
                },
                {
                  name: 'edition',
                  label: 'Edition',
                  kind: 'choice',
                  options: editions.answer.map(({ slug, name }) => [slug, name] as const),
                },
                { name: 'category', label: 'Category that it answers', isOptional: true },
                { name: 'signedBy', label: 'Who replies' },
                { ...words, label: 'The reply, word by word' },
              ]}
              onSend={send}
            />
          </FoldedForm>
        </>
      )}
    </>
  );
}

const aboutAs = ({ kind, slug }: RemarkResponse['about']): string => `${kind} ${slug}`;

/** What a caveat can be about, as one text each → what it is called. */
function aboutChoices(rows: CatalogueRows): (readonly [string, string])[] {
  const makerOf = (slug: string) => rows.makers.find((one) => one.slug === slug) ?? { name: slug };
  return [
    ...CONSTRUCTIONS.map(
      (construction) => [`construction ${construction}`, `all lines that are ${CONSTRUCTION_WORDS[construction]}`] as const,
    ),
    ...rows.lines.map((line) => [`line ${line.slug}`, `${lineName(makerOf(line.maker), line)}, all its variants`] as const),
    ...[...variantNames(rows)].map(([slug, name]) => [`variant ${slug}`, name] as const),
  ];
}

type RowProps = RemarkResponse & { readonly called: string; readonly onChanged: () => void };

function Row({ id, kind, edition, words, signedBy, at, end, called, onChanged }: RowProps) {
  const of = `${kind} on ${called}${edition === null ? '' : `, ${edition}`}`;
  return (
    <li>
      <p>
        {of}: {words}
        <br />
        <span class="soft">
          {signedBy}, {dayOf(at)}
        </span>
      </p>
      {end ? (
        <span>
          ended {dayOf(end.at)}: {end.reason}
        </span>
      ) : (
        <>
          <details>
            <summary>Say the {of} otherwise</summary>
            <Form
              schema={remarkSuccessorRequest}
              submit="Say it so from now on"
              keptAs={`successor ${id}`}
              fields={[
                { name: 'words', label: 'In words that readers see', kind: 'words', value: words },
                { name: 'reason', label: 'Why the former is superseded', kind: 'words' },
              ]}
              onSend={async (request) => {
                await ask(remarkResponse, 'POST', `remarks/${id}/successor`, { body: request });
                onChanged();
                return 'The next release says it so, and its erratum tells what it said before.';
              }}
            />
          </details>
          <WithReason
            act={`End the ${of}`}
            keptAs={`ending ${id}`}
            onSend={async (reason) => {
              await ask(remarkResponse, 'POST', `remarks/${id}/ending`, { body: { reason } });
              onChanged();
              return 'It stands no more; the next release leaves it out.';
            }}
          />
        </>
      )}
    </li>
  );
}
