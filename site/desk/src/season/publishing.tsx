import { useEffect, useState } from 'preact/hooks';
import { z } from 'zod';
import { previewResponse } from '../../../../api/contract/endpoints/previews.js';
import { releaseStateResponse, type ReleaseRequest } from '../../../../api/contract/endpoints/releases.js';
import { houseStatementResponse } from '../../../../api/contract/endpoints/statements.js';
import { ask } from '../http/ask.js';
import { newKey } from '../http/new-key.js';
import { Loading } from '../parts/loading.js';
import { useForgetForm } from '../parts/use-typed.js';
import { useAct } from '../parts/use-act.js';
import { useLoaded } from '../parts/use-loaded.js';
import { PART_NAMES } from '../statements/who-we-are.js';
import { dayOf, timeOf } from '../words/day-of.js';
import { ReleaseForm } from './release-form.js';
import { ReleaseSummary } from './release-summary.js';

type Release = z.infer<typeof releaseStateResponse>;

interface Props {
  readonly slug: string;
  readonly isFirst: boolean;
  readonly onPublished: () => void;
}

const ASK_AGAIN_MS = 1500;

/** Publication: now or at a time, and a way to call it off until then. What is published never changes; a correction is a new revision. */
export function Publishing({ slug, isFirst, onPublished }: Props) {
  const [release, setRelease] = useState<Release | null>(null);
  const [request, setRequest] = useState<ReleaseRequest | null>(null);
  const { said, act } = useAct(() => undefined);
  const keptAs = `release ${slug}`;
  const forget = useForgetForm(keptAs);
  const preview = useLoaded(() => ask(previewResponse, 'POST', `editions/${slug}/previews`), [slug]);
  const house = useLoaded(() => ask(houseStatementResponse, 'GET', 'house-statement'));
  const unsaid = isFirst ? (house.answer?.missing ?? []) : [];
  const watch = async (revision: number): Promise<void> => {
    const now = await ask(releaseStateResponse, 'GET', `editions/${slug}/releases/${revision}`);
    setRelease(now);
    if (now.state === 'published') {
      onPublished();
      return;
    }
    if (now.publishAt === null) setTimeout(() => void watch(revision), ASK_AGAIN_MS);
  };
  const next = isFirst ? 1 : preview.answer?.published && preview.answer.published.revision + 1;
  useEffect(() => {
    // An order may stand from an earlier visit; where there is none, the answer is a refusal and the form stays.
    if (next) watch(next).catch(() => undefined);
  }, [slug, next]);
  const publish = () => {
    act(async () => {
      const asked = await ask(releaseStateResponse, 'POST', `editions/${slug}/releases`, { body: request, key: newKey() });
      forget();
      setRequest(null);
      await watch(asked.revision);
    }, '');
  };
  const callOff = (revision: number) => {
    act(async () => {
      await ask(z.null(), 'DELETE', `editions/${slug}/releases/${revision}`);
      setRelease(null);
    }, `Revision ${revision} is called off; nobody has seen it.`);
  };
  return (
    <section>
      <h2>{isFirst ? 'Publish it' : 'Publish a correction'}</h2>
      <p role="status">{said}</p>
      {unsaid.length > 0 && (
        <p class="signal">
          Readers do not know yet who publishes: {unsaid.map((part) => PART_NAMES[part]).join(', ')} {unsaid.length === 1 ? 'is' : 'are'}{' '}
          missing. <a href="/desk/statements/">Say it first</a>
        </p>
      )}
      {release && <Ordered slug={slug} release={release} onCallOff={callOff} />}
      {!release && <Loading of={preview} />}
      {!release && preview.answer && request && (
        <ReleaseSummary preview={preview.answer} request={request} onPublish={publish} onBack={() => setRequest(null)} />
      )}
      {!release && preview.answer && !request && (
        <ReleaseForm preview={preview.answer} keptAs={keptAs} isFirst={isFirst} onAsked={setRequest} />
      )}
    </section>
  );
}

function Ordered({ slug, release, onCallOff }: { slug: string; release: Release; onCallOff: (revision: number) => void }) {
  const { revision, state, publishAt } = release;
  return (
    <p>
      Revision {revision}: {state === 'published' ? 'published. ' : 'being written; you may leave this page. '}
      {publishAt !== null && `Readers see it from ${dayOf(publishAt)}, ${timeOf(new Date(publishAt))}. `}
      {state === 'building' && (
        <button type="button" onClick={() => onCallOff(revision)}>
          Call revision {revision} off
        </button>
      )}
      {state === 'published' && <a href={`/editions/${slug}/`}>The published edition</a>}
    </p>
  );
}
