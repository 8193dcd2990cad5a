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
import type { SeasonPlan } from '../season/season-plan.js';
import type { SeasonClock } from './season-clock.js';
import type { Stage } from './stage.js';
import { prepareMethods, workSeason } from './work-season.js';

/** A running server and the clock that it reads. */
export interface House {
  readonly url: string;
  readonly clock: SeasonClock;
  /** Secret of the invitation for the first admin; not needed where winters are laid. */
  readonly firstInvitation: string | null;
  /** Shows the first edition, before the winters after it take the machine. */
  readonly showFirst?: () => Promise<void>;
}

/** Instead of playing a winter's bench work: lays what it wrote in another house, and answers the blind codes of its spools. */
export type LayWinter = (plan: SeasonPlan) => Promise<ReadonlyMap<string, string>>;

/** Keeps what was written since it last looked at the house: at first all that is there. */
export interface Onlooker {
  begin(): Promise<void>;
  keep(season: string, blindCodes: ReadonlyMap<string, string>): Promise<void>;
}

/** The house is founded: before this day it has nothing. */
export const FOUNDED_ON = '2023-08-25';

/** Methods and catalogue are ready this long before an edition opens. */
const LEAD_DAYS = 40;

/** What may stand beside the playing of the demo. */
export interface Beside {
  readonly lay?: LayWinter;
  readonly onlooker?: Onlooker;
}

/**
 * Brings the whole demo into a server through the API, as people would have done it over the winters: one thing after the other, so that
 * what is numbered, and what stands in the order of its entering, is alike in every demo.
 * Where the bench work is laid, editions are closed and published through the API all the same.
 */
export async function loadHouse(
  { url, clock, firstInvitation, showFirst }: House,
  demo: Demo,
  progress: (line: string) => void,
  { lay, onlooker }: Beside = {},
): Promise<void> {
  const notes = { blindCodes: new Map<string, string>(), references: new Map<string, string>() };
  const certificates = new Certificates();
  if (firstInvitation !== null) await found(url, firstInvitation);
  const played = new PlayedWinters(demo);
  for (const plan of demo.seasons) {
    const { season } = plan;
    const codes = await lay?.(plan);
    codes?.forEach((code, spool) => notes.blindCodes.set(spool, code));
    if (lay) progress(`${season.name}: ${plan.entries.length} variants, ${plan.handIns.length} submissions laid`);
    clock.moveTo(daysAfter(season.opensOn, -LEAD_DAYS), 9);
    const people = await signEverybodyIn(url);
    const stage: Stage = { people, clock, certificates, ...notes };
    if (lay === undefined) await played.play(stage, plan, progress);
    await onlooker?.keep(season.slug, notes.blindCodes);
    await publishSeason(stage, plan, progress);
    if (season.previous === null) await showFirst?.();
    await signEverybodyOut(people);
    await onlooker?.begin();
  }
}

/** What the catalogue has grown by winter after winter. */
class PlayedWinters {
  private readonly lines = new Set<string>();
  private readonly variants = new Set<string>();
  private before = FOUNDED_ON;

  constructor(private readonly demo: Demo) {}

  async play(stage: Stage, plan: SeasonPlan, progress: (line: string) => void): Promise<void> {
    const { season, entries } = plan;
    const { editor } = stage.people;
    await prepareMethods(stage, this.before, season);
    // A scheme names series, so that it comes after the first versions of its methods.
    if (season.previous === null) for (const scheme of [demoScheme, demoStrandScheme]) await editor.post('/v1/schemes', { body: scheme });
    const fresh = entries.filter(({ slug }) => !this.variants.has(slug));
    await enterVariants(editor, this.demo.seed, fresh, this.lines, daysAfter(season.opensOn, -LEAD_DAYS));
    fresh.forEach(({ slug }) => this.variants.add(slug));
    await workSeason(stage, this.demo.seed, plan, progress);
    this.before = season.opensOn;
  }
}

async function found(url: string, firstInvitation: string): Promise<void> {
  await makeAccounts(url, firstInvitation);
  const founder = await HouseClient.signedIn(url, demoEditor);
  await foundHouse(founder);
  await founder.signOut();
}

async function foundHouse(editor: Stage['people']['editor']): Promise<void> {
  await enterMakers(editor);
  await enterInstruments(editor);
  await enterMethods(editor);
  await editor.post('/v1/house-statement', { body: demoHouseStatement });
  for (const { construction, words } of demoCaveats)
    await editor.post('/v1/remarks', { body: { kind: 'caveat', about: { kind: 'construction', slug: construction }, words } });
}
