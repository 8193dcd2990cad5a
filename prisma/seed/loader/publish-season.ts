import { setTimeout as pause } from 'node:timers/promises';
import type { SeasonPlan } from '../season/season-plan.js';
import { daysAfter } from '../season/seasons.js';
import { MISLABELLED, REPLY } from '../season/story.js';
import { moveEdition } from './open-edition.js';
import { noted } from './stage.js';
import { proposeTo } from './propose-to.js';
import type { Stage } from './stage.js';

const PUBLISHED_WITHIN_MS = 120_000;
const LOOK_EVERY_MS = 100;

/** Closes the edition, leaves out what must be left out, publishes; a wrong box found later leads to an erratum. */
export async function publishSeason(stage: Stage, { season, exclusions }: SeasonPlan, progress: (line: string) => void): Promise<void> {
  if (season.publishedOn === null) return;
  const { editor } = stage.people;
  stage.clock.moveTo(daysAfter(season.closesOn, 1), 9);
  await moveEdition(editor, season.slug, 'closure');
  for (const { variant, reasonCode, words, effect } of exclusions)
    await editor.post(`/v1/editions/${season.slug}/exclusions`, { body: { variant, reasonCode, words, effect } });
  stage.clock.moveTo(season.publishedOn, 9);
  await publish(stage, season.slug, null);
  progress(`${season.name}: published`);
  if (MISLABELLED.season !== season.slug) return;
  await reidentify(stage);
  await editor.post('/v1/remarks', { body: { kind: 'reply', edition: season.slug, ...REPLY } });
  await publish(stage, season.slug, {
    reasonCode: 'reidentification',
    words: MISLABELLED.words,
    expects: await expected(stage, season.slug),
  });
  progress(`${season.name}: published again with an erratum`);
}

/** A spool is found to hold another variant than its box says. */
async function reidentify(stage: Stage): Promise<void> {
  const {
    people: { editor },
    clock,
    blindCodes,
  } = stage;
  clock.moveTo(MISLABELLED.foundOn, 11);
  const code = noted(blindCodes, `${MISLABELLED.season}/${MISLABELLED.label}/${MISLABELLED.letter}`);
  const { version } = await editor.get<{ version: number }>(`/v1/catalogue/spools/${code}`);
  const { id } = await proposeTo(stage, {
    kind: 'reidentification',
    spool: code,
    variant: MISLABELLED.contents,
    reason: MISLABELLED.reason,
  });
  await editor.post(`/v1/catalogue/spools/${code}/reidentifications`, {
    version,
    body: { proposal: id },
  });
}

/** The place that readers have seen the wrong box in. */
async function expected({ people: { editor } }: Stage, edition: string): Promise<Erratum['expects']> {
  const { overall } = await editor.get<{ overall: { variant: { slug: string }; place: number | null }[] }>(
    `/v1/editions/${edition}/divisions/braided`,
  );
  return overall
    .filter(({ variant }) => variant.slug === MISLABELLED.label)
    .map(({ variant, place }) => ({ where: `overall, ${variant.slug}, place`, before: String(place) }));
}

interface Erratum {
  readonly reasonCode: string;
  readonly words: string;
  readonly expects: readonly { readonly where: string; readonly before: string }[];
}

async function publish({ people: { editor } }: Stage, edition: string, erratum: Erratum | null): Promise<void> {
  const asked = await editor.post<Release>(`/v1/editions/${edition}/releases`, { body: { erratum } });
  const until = Date.now() + PUBLISHED_WITHIN_MS;
  let release = asked;
  while (release.state !== 'published') {
    if (Date.now() > until)
      throw new Error(
        `Revision ${asked.revision} of ${edition} is ${release.state} after ${PUBLISHED_WITHIN_MS / 1000} s; expected published. Look for errors of the release job.`,
      );
    await pause(LOOK_EVERY_MS);
    release = await editor.get<Release>(`/v1/editions/${edition}/releases/${asked.revision}`);
  }
}

interface Release {
  readonly revision: number;
  readonly state: string;
}
