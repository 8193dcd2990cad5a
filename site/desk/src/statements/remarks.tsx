import { CONSTRUCTIONS } from '../../../../api/contract/constructions.js';
import type { Construction } from '../../../../api/contract/constructions.js';
import { remarkRequest, remarkResponse, remarkSuccessorRequest, remarksResponse } from '../../../../api/contract/endpoints/statements.js';
import type { RemarkResponse } from '../../../../api/contract/endpoints/statements.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { FoldedForm } from '../parts/folded-form.js';
import { useLoaded } from '../parts/use-loaded.js';
import { WithReason } from '../parts/with-reason.js';
import { dayOf } from '../words/day-of.js';
import { CONSTRUCTION_WORDS, optionsOf } from '../words/kind-words.js';

/** Caveats that no figure settles, and replies of makers. */
export function Remarks() {
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
          <Row key={remark.id} {...remark} onChanged={remarks.again} />
        ))}
      </ul>
      {remarks.answer && (
        <>
          <FoldedForm what="A caveat on how lines are made" count={remarks.answer.items.length}>
            <Form
              schema={remarkRequest}
              submit="Add this caveat"
              isRepeated
              fixed={{ kind: 'caveat' }}
              prepare={({ construction, ...entered }) => ({ ...entered, about: { kind: 'construction', slug: construction } })}
              fields={[
                { name: 'construction', label: 'Construction', kind: 'choice', options: optionsOf(CONSTRUCTIONS, CONSTRUCTION_WORDS) },
                words,
              ]}
              onSend={send}
            />
          </FoldedForm>
          <FoldedForm what="A caveat on a line or variant" count={remarks.answer.items.length}>
            <Form
              schema={remarkRequest}
              submit="Add the caveat"
              isRepeated
              fixed={{ kind: 'caveat' }}
              fields={[
                {
                  name: 'about/kind',
                  label: 'Of',
                  kind: 'choice',
                  options: [
                    ['line', 'a line in all its variants'],
                    ['variant', 'one variant'],
                  ],
                },
                { name: 'about/slug', label: 'Its short name' },
                words,
              ]}
              onSend={send}
            />
          </FoldedForm>
          <FoldedForm what="A reply of a maker" count={remarks.answer.items.length}>
            <Form
              schema={remarkRequest}
              submit="Enter the reply"
              isRepeated
              fixed={{ kind: 'reply' }}
              fields={[
                { name: 'variant', label: 'Variant: its short name' },
                { name: 'edition', label: 'Edition: its short name' },
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

const wordsFor = ({ kind, slug }: RemarkResponse['about']): string =>
  kind === 'construction' ? CONSTRUCTION_WORDS[slug as Construction] : slug;

function Row({ id, kind, about, edition, words, signedBy, at, end, onChanged }: RemarkResponse & { readonly onChanged: () => void }) {
  const of = `${kind} on ${wordsFor(about)}${edition === null ? '' : `, ${edition}`}`;
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
