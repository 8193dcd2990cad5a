import { z } from 'zod';
import { type editionResponse } from '../../../../api/contract/endpoints/editions.js';
import { schemesResponse } from '../../../../api/contract/endpoints/schemes.js';
import { methodsResponse } from '../../../../api/contract/endpoints/methods.js';
import { allPages } from '../http/all-pages.js';
import { ask } from '../http/ask.js';
import type { FieldOptions } from '../parts/field-options.js';

type Edition = z.infer<typeof editionResponse>;
type Scheme = z.infer<typeof schemesResponse>['items'][number];
type Method = z.infer<typeof methodsResponse>['items'][number];

export interface Choices {
  readonly schemes: readonly Scheme[];
  readonly methods: readonly Method[];
}

/** What an edition is put together from. */
export async function loadChoices(): Promise<Choices> {
  const [schemes, methods] = await Promise.all([ask(schemesResponse, 'GET', 'schemes'), allPages(methodsResponse, 'catalogue/methods')]);
  return { schemes: schemes.items, methods };
}

const APART = '#';
const versioned = ({ slug, number }: { slug: string; number: number }) => `${slug}${APART}${number}`;

export const versionOf = (sent: unknown): { slug: string; number: number } => {
  const [slug = '', number = ''] = z.string().parse(sent).split(APART);
  return { slug, number: Number(number) };
};

/** Versions of methods that can be pinned, the newest of each; those that are pinned already as they are. */
export function methodsField(methods: readonly Method[], pinned: Edition['methods'] = [], label = 'Method versions that it is tested by') {
  const newest = methods.flatMap(({ slug, versions }) => {
    const last = versions.at(-1);
    return last && !pinned.some((one) => one.slug === slug) ? [{ slug, number: last.number }] : [];
  });
  const nameOf = (slug: string) => methods.find((one) => one.slug === slug)?.name ?? slug;
  return {
    name: 'methods',
    label,
    kind: 'several',
    options: [...pinned, ...newest].map((one) => [versioned(one), `${nameOf(one.slug)}, version ${one.number}`] as const),
    ticked: pinned.map(versioned),
  } satisfies FieldOptions;
}

/** The scheme that an edition or a division is ranked by. */
export const schemeField = (schemes: readonly Scheme[], current?: { slug: string; number: number }): FieldOptions => ({
  name: 'scheme',
  label: 'Scheme',
  kind: 'choice',
  options: schemes.map((scheme) => [versioned(scheme), `${scheme.name}, version ${scheme.number}`] as const),
  ...(current && { value: versioned(current) }),
});

/** Everything of an edition but its entries and its short name. */
export const editionFields = ({ schemes, methods }: Choices, others: readonly string[], current?: Edition): FieldOptions[] => [
  { name: 'name', label: 'Name', ...(current && { value: current.name }) },
  ...(current?.divisions ? [] : [schemeField(schemes, current?.scheme)]),
  { name: 'opensOn', label: 'Opens on', kind: 'date', ...(current && { value: current.opensOn }) },
  { name: 'closesOn', label: 'Closes on', kind: 'date', ...(current && { value: current.closesOn }) },
  {
    name: 'previous',
    label: 'Movement is told against',
    kind: 'choice',
    isOptional: true,
    options: [['', 'no edition'], ...others.map((slug) => [slug, slug] as const)],
    ...(current && { value: current.previous ?? '' }),
  },
  methodsField(methods, current?.methods),
];

/** What stands in those fields, as the API takes it. */
export const toEdition = (entered: Record<string, unknown>): Record<string, unknown> => ({
  ...entered,
  ...('scheme' in entered && { scheme: versionOf(entered['scheme']) }),
  methods: (entered['methods'] as unknown[]).map(versionOf),
});
