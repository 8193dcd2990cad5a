import { useState } from 'preact/hooks';
import type { z } from 'zod';
import { boardResponse } from '../../../../api/contract/endpoints/board.js';
import { editionResponse } from '../../../../api/contract/endpoints/editions.js';
import { schemesResponse } from '../../../../api/contract/endpoints/schemes.js';
import type { Obstacle } from '../../../../api/contract/obstacle.js';
import { ask } from '../http/ask.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';
import { failureWords } from '../words/failure-words.js';
import { Amending } from './amending.js';
import { Assigning } from './assigning.js';
import { BoardMatrix } from './board-matrix.js';
import { Excluding } from './excluding.js';
import { Obstacles } from './obstacles.js';
import { Overruling } from './overruling.js';
import { PlannedEdition } from './planned-edition.js';
import { Planning } from './planning.js';
import { PreviewTable } from './preview-table.js';
import { Publishing } from './publishing.js';
import { Retests } from './retests.js';

type Edition = z.infer<typeof editionResponse>;

interface Props {
  readonly edition: Edition;
  /** Slugs of the house's other editions. */
  readonly others: readonly string[];
  readonly onMoved: () => void;
}

const IN_THE_WAY = 'in-the-way';

/** One edition: what is missing, how it would stand, and its next act. */
export function EditionWork({ edition, others, onMoved }: Props) {
  const { slug, name, state, version, opensOn, closesOn } = edition;
  const work = useLoaded(async () => {
    const [board, schemes] = await Promise.all([
      ask(boardResponse, 'GET', `editions/${slug}/board`),
      ask(schemesResponse, 'GET', 'schemes'),
    ]);
    const rulesOf = (of?: { slug: string; number: number }) =>
      schemes.items.find((one) => one.slug === of?.slug && one.number === of.number)?.rules.categories ?? [];
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
          onClose={() => move('closure', 'It is closed. Look at the preview once more, then publish.')}
        />
      )}
      {(state === 'closed' || state === 'published') && <Publishing slug={slug} isFirst={state === 'closed'} onPublished={onMoved} />}
    </>
  );
}

function Opening({ obstacles, name, onOpen }: { obstacles: readonly Obstacle[]; name: string; onOpen: () => void }) {
  return (
    <section>
      <h2>Open it</h2>
      <Obstacles of={obstacles} />
      <p>From the opening on, its methods, checks and the key of the blind codes are fixed, and testers hand in.</p>
      <button type="button" class="main" aria-disabled={obstacles.length > 0} onClick={() => obstacles.length === 0 && onOpen()}>
        Open {name}
      </button>
    </section>
  );
}

function Closing({ obstacles, name, onClose }: { obstacles: readonly Obstacle[]; name: string; onClose: () => void }) {
  return (
    <section>
      <h2>Close it</h2>
      {obstacles.length > 0 && (
        <p>
          <a href={`#${IN_THE_WAY}`}>{obstacles.length === 1 ? 'Something stands' : `${obstacles.length} things stand`} in the way</a>, each
          with what to do about it.
        </p>
      )}
      <p>After the closing nobody hands in any more. It cannot be opened again.</p>
      <button type="button" class="main" aria-disabled={obstacles.length > 0} onClick={() => obstacles.length === 0 && onClose()}>
        Close {name}
      </button>
    </section>
  );
}
