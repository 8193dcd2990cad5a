import {
  methodRequest,
  methodResponse,
  methodsResponse,
  methodVersionRequest,
  methodVersionResponse,
} from '../../../../api/contract/endpoints/methods.js';
import type { MethodVersion } from '../../../../api/contract/endpoints/methods.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import type { FieldOptions } from '../parts/field-options.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';
import { toSlug } from '../words/to-slug.js';
import { versionFields, versionOf } from './version-texts.js';

/** What a form of a version is opened for: the next one of a method, or the first of another that is much like it. */
export type VersionWish = 'next' | 'like';
export const versionAt = (wish: VersionWish, slug: string): string => `/desk/methods/?${wish}=${encodeURIComponent(slug)}`;

interface Props {
  readonly wish: VersionWish;
  /** Of the method whose newest version it begins from. */
  readonly slug: string;
}

/** A version in the house's own words; what is on record stays, the new one follows it. */
export function NewVersion({ wish, slug }: Props) {
  const base = useLoaded(async () => {
    const { versions } = await ask(methodResponse, 'GET', `catalogue/methods/${encodeURIComponent(slug)}`);
    return ask(methodVersionResponse, 'GET', `catalogue/methods/${encodeURIComponent(slug)}/versions/${versions.at(-1)?.number ?? 1}`);
  });
  return (
    <>
      <h1>{wish === 'next' ? `${base.answer?.name ?? 'A method'}: next version` : 'Another method'}</h1>
      <Loading of={base} />
      {base.answer && (
        <>
          <p>
            What stands here is version {base.answer.number} of {base.answer.name}: change what is other now. A version never changes once
            it is on record: specimens are judged by the one that held on their day.
          </p>
          {wish === 'next' ? <NextVersion base={base.answer} /> : <AnotherMethod base={base.answer} />}
        </>
      )}
      <p>
        <a href="/desk/methods/">All methods</a>
      </p>
    </>
  );
}

const FROM: FieldOptions = { name: 'effectiveFrom', label: 'First bench day', kind: 'date' };

const put = async (slug: string, version: object) => {
  const { name, number, effectiveFrom } = await ask(methodVersionResponse, 'POST', `catalogue/methods/${slug}/versions`, { body: version });
  return `${name}, version ${number}, is in force from ${dayOf(effectiveFrom)}.`;
};

function NextVersion({ base }: { base: MethodVersion }) {
  return (
    <Form
      schema={methodVersionRequest}
      submit="Put it on record"
      keptAs={`next version of ${base.slug}`}
      fields={[
        FROM,
        { name: 'wording/changes', label: 'What changed against the version before', kind: 'words' },
        {
          name: 'isComparableWithPrevious',
          label: 'Results of this version and of the one before',
          kind: 'choice',
          options: [
            ['', 'Choose'],
            ['yes', 'may be compared'],
            ['no', 'may not be compared'],
          ],
        },
        ...versionFields(base),
      ]}
      prepare={(entered) => ({
        ...versionOf(base, entered as unknown as Parameters<typeof versionOf>[1]),
        number: base.number + 1,
        effectiveFrom: entered['effectiveFrom'],
        isComparableWithPrevious: { yes: true, no: false }[String(entered['isComparableWithPrevious'])],
      })}
      onSend={(version) => put(base.slug, version)}
    />
  );
}

const methodAndVersion = methodVersionRequest.safeExtend(methodRequest.shape);

function AnotherMethod({ base }: { base: MethodVersion }) {
  return (
    <Form
      schema={methodAndVersion}
      submit="Put it on record"
      keptAs={`method like ${base.slug}`}
      fields={[{ name: 'name', label: 'What it is called', hint: 'For instance after its knot.' }, FROM, ...versionFields(base)]}
      prepare={(entered) => ({
        ...versionOf(base, {
          ...(entered as unknown as Parameters<typeof versionOf>[1]),
          wording: { ...(entered['wording'] as object), changes: 'First version.' },
        }),
        slug: toSlug(String(entered['name'])),
        name: entered['name'],
        number: 1,
        effectiveFrom: entered['effectiveFrom'],
        isComparableWithPrevious: false,
      })}
      onSend={async ({ slug, name, ...version }) => {
        // What was broken off between the two goes on here.
        const there = (await allPages(methodsResponse, 'catalogue/methods')).find((one) => one.slug === slug);
        if (!there || there.versions.length > 0) await ask(methodResponse, 'POST', 'catalogue/methods', { body: { slug, name } });
        return put(slug, version);
      }}
    />
  );
}
