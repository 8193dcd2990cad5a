import { useEffect, useState } from 'preact/hooks';
import { z } from 'zod';
import { erratumSchema } from '../../../../api/contract/documents/release-documents.js';
import { releaseRequest, releaseStateResponse } from '../../../../api/contract/endpoints/releases.js';
import { ask } from '../http/ask.js';
import { newKey } from '../http/new-key.js';
import { Form } from '../parts/form.js';
import type { FieldOptions } from '../parts/form-field.js';
import { dayOf, timeOf } from '../words/day-of.js';
import { wordsOf } from '../words/words-of.js';

type Release = z.infer<typeof releaseStateResponse>;

interface Props {
  readonly slug: string;
  readonly isFirst: boolean;
  readonly onPublished: () => void;
}

const ASK_AGAIN_MS = 1500;

const ERRATUM: readonly FieldOptions[] = [
  {
    name: 'erratum/reasonCode',
    label: 'Kind of correction',
    kind: 'choice',
    options: erratumSchema.shape.reasonCode.options.map((code) => [code, code] as const),
  },
  { name: 'erratum/words', label: 'What changed and why, for readers', kind: 'words' },
  { name: 'expects/where', label: 'Cell that the correction is about', hint: 'As an erratum names it: overall, quaymade-8-pe-1-2, place' },
  { name: 'expects/before', label: 'What readers see there now' },
];

/** Publication: now or at a time, and a way to call it off until then. What is published never changes; a correction is a new revision. */
export function Publishing({ slug, isFirst, onPublished }: Props) {
  const [release, setRelease] = useState<Release | null>(null);
  const [said, setSaid] = useState('');
  const watch = async (revision: number): Promise<void> => {
    const now = await ask(releaseStateResponse, 'GET', `editions/${slug}/releases/${revision}`);
    setRelease(now);
    if (now.state === 'published') {
      onPublished();
      return;
    }
    if (now.publishAt === null) setTimeout(() => void watch(revision), ASK_AGAIN_MS);
  };
  useEffect(() => {
    // An order may stand from an earlier visit; where there is none, the answer is a refusal and the form stays.
    if (isFirst) watch(1).catch(() => undefined);
  }, [slug]);
  const callOff = async (revision: number) => {
    try {
      await ask(z.null(), 'DELETE', `editions/${slug}/releases/${revision}`);
      setRelease(null);
      setSaid(`Revision ${revision} is called off; nobody has seen it.`);
    } catch (error) {
      setSaid(wordsOf(error));
    }
  };
  return (
    <section>
      <h2>{isFirst ? 'Publish it' : 'Publish a correction'}</h2>
      <p>
        {isFirst
          ? 'Look at the standings once more. What is published stays for ever: a later correction is a new revision with an erratum.'
          : 'The new revision stands beside the old one. Where readers no longer see what you expect here, nothing is published.'}
      </p>
      <p role="status">{said}</p>
      {release ? (
        <p>
          Revision {release.revision}: {release.state === 'published' ? 'published. ' : 'being written; you may leave this page. '}
          {release.publishAt !== null && `Readers see it from ${dayOf(release.publishAt)}, ${timeOf(new Date(release.publishAt))}. `}
          {release.state === 'building' && (
            <button type="button" onClick={() => void callOff(release.revision)}>
              Call revision {release.revision} off
            </button>
          )}
          {release.state === 'published' && <a href={`/editions/${slug}/`}>The published edition</a>}
        </p>
      ) : (
        <Form
          schema={releaseRequest}
          submit={isFirst ? 'Publish' : 'Publish the correction'}
          fields={[
            { name: 'publishAt', label: 'When readers see it', kind: 'moment', isOptional: true, hint: 'Empty: as soon as it is written.' },
            ...(isFirst ? [] : ERRATUM),
          ]}
          prepare={toRequest}
          onSend={async (request) => {
            const asked = await ask(releaseStateResponse, 'POST', `editions/${slug}/releases`, { body: request, key: newKey() });
            setSaid('');
            await watch(asked.revision);
            return '';
          }}
        />
      )}
    </section>
  );
}

function toRequest({ publishAt, erratum, expects }: Record<string, unknown>): object {
  return {
    publishAt: typeof publishAt === 'string' ? new Date(publishAt).toISOString() : null,
    erratum: erratum === undefined ? null : { ...(erratum as object), expects: [expects] },
  };
}
