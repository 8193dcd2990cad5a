import type { Demo } from '../demo.js';
import { demoEditor } from '../demo-accounts.js';
import { demoCaveats, demoHouseStatement } from '../house/statements.js';
import { demoScheme, demoStrandScheme } from '../house/scheme.js';
import { daysAfter } from '../season/seasons.js';
import { enterMakers, enterVariants } from './fill-catalogue.js';
import { Certificates, enterInstruments, enterMethods } from './fit-out-bench.js';
import { HouseClient } from './house-client.js';
import { makeAccounts, signEverybodyIn, signEverybodyOut } from './people.js';
import { publishSeason } from './publish-season.js';
import type { SeasonClock } from './season-clock.js';
import type { Stage } from './stage.js';
import { prepareMethods, workSeason } from './work-season.js';

/** A running server and the clock that it reads. */
export interface House {
  readonly url: string;
  readonly clock: SeasonClock;
  /** Secret of the invitation for the first admin. */
  readonly firstInvitation: string;
}

/** The house is founded: before this day it has nothing. */
export const FOUNDED_ON = '2023-08-25';

/** Methods and catalogue are ready this long before an edition opens. */
const LEAD_DAYS = 40;

/** Plays the whole demo into a server, through the API alone, as people would have done it over the winters. */
export async function loadHouse({ url, clock, firstInvitation }: House, demo: Demo, progress: (line: string) => void): Promise<void> {
  await makeAccounts(url, firstInvitation);
  const notes = { blindCodes: new Map<string, string>(), references: new Map<string, string>() };
  const [lines, variants] = [new Set<string>(), new Set<string>()];
  const certificates = new Certificates();
  const founder = await HouseClient.signedIn(url, demoEditor);
  await foundHouse(founder);
  await founder.signOut();
  let before = FOUNDED_ON;
  for (const plan of demo.seasons) {
    const { season, entries } = plan;
    clock.moveTo(daysAfter(season.opensOn, -LEAD_DAYS), 9);
    const people = await signEverybodyIn(url);
    const stage: Stage = { people, clock, certificates, ...notes };
    await prepareMethods(stage, before, season);
    // A scheme names series, so that it comes after the first versions of its methods.
    if (season.previous === null)
      for (const scheme of [demoScheme, demoStrandScheme]) await people.editor.post('/v1/schemes', { body: scheme });
    const fresh = entries.filter(({ slug }) => !variants.has(slug));
    await enterVariants(people.editor, demo.seed, fresh, lines, daysAfter(season.opensOn, -LEAD_DAYS));
    fresh.forEach(({ slug }) => variants.add(slug));
    await workSeason(stage, demo.seed, plan, progress);
    await publishSeason(stage, plan, progress);
    before = season.opensOn;
    await signEverybodyOut(people);
  }
}

async function foundHouse(editor: Stage['people']['editor']): Promise<void> {
  await enterMakers(editor);
  await enterInstruments(editor);
  await enterMethods(editor);
  await editor.post('/v1/house-statement', { body: demoHouseStatement });
  for (const { construction, words } of demoCaveats)
    await editor.post('/v1/remarks', { body: { kind: 'caveat', about: { kind: 'construction', slug: construction }, words } });
}
