import { useState } from 'preact/hooks';
import type { z } from 'zod';
import { boardResponse } from '../../../../api/contract/endpoints/board.js';
import { editionResponse } from '../../../../api/contract/endpoints/editions.js';
import { schemesResponse } from '../../../../api/contract/endpoints/schemes.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';
import { failureWords } from '../words/failure-words.js';
import { Amending } from './amending.js';
import { Assigning } from './assigning.js';
import { BoardMatrix } from './board-matrix.js';
import { Excluding } from './excluding.js';
import { Closing, IN_THE_WAY, Opening } from './opening-and-closing.js';
import { Obstacles } from './obstacles.js';
import { Overruling } from './overruling.js';
import { PlannedEdition } from './planned-edition.js';
import { Planning } from './planning.js';
import { PreviewTable } from './preview-table.js';
import { Publishing } from './publishing.js';
import { Retests } from './retests.js';
import { NameOf, useVariantNames } from '../parts/variant-names.js';
import { useMethodNames } from '../parts/use-method-names.js';

type Edition = z.infer<typeof editionResponse>;

interface Props {
  readonly edition: Edition;
  /** Slugs of the house's other editions. */
  readonly others: readonly string[];
  readonly onMoved: () => void;
}

/** One edition: what is missing, how it would stand, and its next act. */
export function EditionWork(props: Props) {
  const { divisions = [] } = props.edition;
  const variantName = useVariantNames();
  const methodName = useMethodNames();
  const schemes = useLoaded(async () => (await ask(schemesResponse, 'GET', 'schemes')).items);
  const named = [
    ...divisions,
    ...(schemes.answer ?? []).flatMap(({ rules }) => rules.categories.map(({ code, name }) => ({ slug: code, name }))),
  ];
  const nameOf = (slug: string) => named.find((one) => one.slug === slug)?.name ?? methodName(variantName(slug));
  if (!schemes.answer)
    return (
      <>
        <h1>{props.edition.name}</h1>
        <Loading of={schemes} />
      </>
    );
  return (
    <NameOf.Provider value={nameOf}>
      <Work {...props} schemes={schemes.answer} />
    </NameOf.Provider>
  );
}

type Schemes = z.infer<typeof schemesResponse>['items'];

function Work({ edition, others, schemes, onMoved }: Props & { readonly schemes: Schemes }) {
  const { slug, name, state, version, opensOn, closesOn } = edition;
  const work = useLoaded(async () => {
    const board = await ask(boardResponse, 'GET', `editions/${slug}/board`);
    const rulesOf = (of?: { slug: string; number: number }) =>
      schemes.find((one) => one.slug === of?.slug && one.number === of.number)?.rules.categories ?? [];
    const compared = (edition.divisions ?? []).map(({ slug: division, name: named, scheme }) => ({
      division,
      name: named,
      categories: rulesOf(scheme),
    }));
    return { board, compared: edition.divisions ? compared : [{ division: undefined, name: '', categories: rulesOf(edition.scheme) }] };
  }, [slug, version]);
  const board = work.answer?.board.entries ?? [];
  const entered = board.map(({ variant }) => variant);
  const [said, setSaid] = useState('');
  const [wanted, setWanted] = useState<string | null>(null);
  const move = (step: 'opening' | 'closure', words: string) => {
    ask(editionResponse, 'POST', `editions/${slug}/${step}`, { version }).then(
      () => {
        setSaid(words);
        onMoved();
      },
      (error: unknown) => setSaid(failureWords(error)),
    );
  };
  return (
    <>
      <h1>{name}</h1>
      <dl class="context">
        {Object.entries({ State: state, Opens: dayOf(opensOn), Closes: dayOf(closesOn), Entries: edition.entries }).map(([term, value]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <Loading of={work} />
      <p role="status">{said}</p>
      {state === 'planned' && <PlannedEdition edition={edition} entered={entered} others={others} onChanged={onMoved} />}
      {work.answer && state === 'planned' && (
        <Opening
          obstacles={work.answer.board.standsInTheWay}
          name={name}
          onOpen={() => move('opening', 'It is open. Testers hand in from now on.')}
        />
      )}
      {work.answer && state !== 'planned' && (
        <>
          {state === 'open' && work.answer.board.standsInTheWay.length > 0 && (
            <section id={IN_THE_WAY}>
              <h2>In the way of closing</h2>
              <Obstacles of={work.answer.board.standsInTheWay} />
            </section>
          )}
          <h2>Entries by category</h2>
          {work.answer.compared.map((one, index) => (
            <BoardMatrix
              key={one.name}
              {...one}
              entries={board.filter(({ division }) => division === one.division)}
              isAlone={work.answer?.compared.length === 1}
              isFirst={index === 0}
              onAsk={setWanted}
            />
          ))}
          <Planning slug={slug} compared={work.answer.compared} />
          <h2>As it would stand</h2>
          <PreviewTable slug={slug} />
          {(state === 'open' || state === 'closed') && <Excluding slug={slug} entries={board} onChanged={work.again} />}
        </>
      )}
      {work.answer && edition.divisions && <Overruling slug={slug} divisions={edition.divisions} entries={board} onChanged={onMoved} />}
      {work.answer && (state === 'planned' || state === 'open') && (
        <Assigning slug={slug} methods={edition.methods} entries={board} wanted={wanted} onAll={() => setWanted(null)} />
      )}
      {state !== 'planned' && <Retests slug={slug} canDraw={state === 'open'} />}
      {work.answer && state === 'open' && <Amending edition={edition} entered={entered} onAmended={onMoved} />}
      {work.answer && state === 'open' && (
        <Closing
          obstacles={work.answer.board.standsInTheWay}
          name={name}
          entries={board}
          onClose={() => move('closure', 'It is closed. Look at the preview once more, then publish.')}
        />
      )}
      {(state === 'closed' || state === 'published') && <Publishing slug={slug} isFirst={state === 'closed'} onPublished={onMoved} />}
    </>
  );
}
