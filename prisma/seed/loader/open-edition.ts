import { demoDivisions } from '../house/scheme.js';
import { demoMethods, versionOn } from '../methods/demo-methods.js';
import type { DemoMethodSlug } from '../methods/demo-methods.js';
import type { SeasonPlan } from '../season/season-plan.js';
import type { Stage } from './stage.js';

/** Spools in, edition planned with its entries, opened. */
export async function openEdition({ people: { editor }, blindCodes }: Stage, { season, entries, spools }: SeasonPlan): Promise<void> {
  // One after the other, so that the codes are drawn in the same order each time.
  for (const { key, variant, source, obtainedOn, place, lot, lengthM } of spools) {
    const { blindCode } = await editor.post<{ blindCode: string }>('/v1/catalogue/spools', {
      body: { variant, source, obtainedOn, place, lot, lengthM },
    });
    blindCodes.set(key, blindCode);
  }
  const methods = demoMethods.map(({ slug }) => ({ slug, number: versionOn(slug as DemoMethodSlug, season.opensOn) }));
  const { slug, name, opensOn, closesOn, previous } = season;
  await editor.post('/v1/editions', {
    body: { slug, name, divisions: demoDivisions, opensOn, closesOn, previous, methods },
  });
  await editor.post(`/v1/editions/${slug}/entries`, { body: { variants: entries.map((entry) => entry.slug) } });
  await moveEdition(editor, slug, 'opening');
}

/** Opens or closes an edition as it stands. */
export async function moveEdition(editor: Stage['people']['editor'], slug: string, change: 'opening' | 'closure'): Promise<void> {
  const { version } = await editor.get<{ version: number }>(`/v1/bench/editions/${slug}`);
  await editor.post(`/v1/editions/${slug}/${change}`, { version });
}

/** Declares every tie that a tester has. */
export async function declareInterests(
  { people }: Stage,
  interests: readonly { tester: number; maker: string; words: string }[],
): Promise<void> {
  for (const { tester, maker, words } of interests) await people.testers[tester]?.post('/v1/interests', { body: { maker, words } });
}
