import { demoClaims } from '../house/claims.js';
import { demoMakers } from '../house/makers.js';
import type { DemoVariant } from '../house/variants.js';
import { MAKES } from '../model/makes.js';
import type { HouseClient } from './house-client.js';

const onlyOnce = <Item extends { readonly slug: string }>(items: readonly Item[]): Item[] => [
  ...new Map(items.map((item) => [item.slug, item])).values(),
];

export async function enterMakers(editor: HouseClient): Promise<void> {
  for (const { slug, name } of demoMakers) await editor.post('/v1/catalogue/makers', { body: { slug, name } });
}

/**
 * Enters lines, variants and what their labels say.
 * @param known slugs of lines that are entered already; grows
 * @param seenOn day on which the labels were read
 */
export async function enterVariants(
  editor: HouseClient,
  seed: number,
  variants: readonly DemoVariant[],
  known: Set<string>,
  seenOn: string,
): Promise<void> {
  const lines = onlyOnce(variants.map(({ line }) => line)).filter(({ slug }) => !known.has(slug));
  for (const { slug, maker, name, make } of lines) {
    const { material, construction, carriers, densityGPerCm3 } = MAKES[make];
    known.add(slug);
    await editor.post('/v1/catalogue/lines', { body: { slug, maker, name, material, construction, carriers, densityGPerCm3 } });
  }
  for (const variant of variants) {
    const { slug, line, label, colour } = variant;
    await editor.post('/v1/catalogue/variants', { body: { slug, line: line.slug, size: label, colour } });
    for (const claim of demoClaims(seed, variant))
      await editor.post(`/v1/catalogue/variants/${slug}/claims`, { body: { ...claim, seenOn } });
  }
}
