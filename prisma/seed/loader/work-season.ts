import type { SeasonPlan } from '../season/season-plan.js';
import { daysAfter } from '../season/seasons.js';
import { spoolKey } from '../season/spools.js';
import { DRAFT, INTEREST, RETESTS, ROUND_ROBIN } from '../season/story.js';
import { versionOn } from '../methods/demo-methods.js';
import { enterMethodVersions } from './fit-out-bench.js';
import { handInBlocked, handInDay } from './hand-in-day.js';
import { handInTraces } from './hand-in-traces.js';
import { declareInterests, openEdition } from './open-edition.js';
import { playRoundRobin } from './play-round-robin.js';
import { proposeTo } from './propose-to.js';
import { reviewDay } from './review-day.js';
import { noted } from './stage.js';
import { testAgain } from './test-again.js';
import { answerDoubts, beginControlLine, pullControlLine } from './watch-rigs.js';
import type { Stage } from './stage.js';

/** From the opening to the last review: bench days, files, decisions, withdrawals. */
export async function workSeason(stage: Stage, seed: number, plan: SeasonPlan, progress: (line: string) => void): Promise<void> {
  const { season } = plan;
  stage.clock.moveTo(season.opensOn, 9);
  await beginControlLine(stage, seed, season.slug);
  await openEdition(stage, plan);
  if (INTEREST.season === season.slug) await declareInterests(stage, [INTEREST]);
  if (ROUND_ROBIN.season === season.slug) await playRoundRobin(stage, seed, plan);
  for (const [day, benchDay] of season.benchDays.entries()) {
    const handIns = plan.handIns.filter(({ task }) => task.day === day);
    await withdraw(stage, plan, benchDay);
    stage.clock.moveTo(benchDay, 9);
    await stage.certificates.enterUpTo(stage.people.editor, benchDay);
    await pullControlLine(stage, seed, handIns);
    stage.clock.moveTo(benchDay, 20);
    await handInBlocked(
      stage,
      plan.blocked.filter(({ task }) => task.day === day),
      'calibration/expired-on-bench-day',
    );
    await handInDay(stage, handIns);
    await handInTraces(stage, seed, handIns, plan.entries);
    await reviewDay(stage, handIns, daysAfter(benchDay, 1));
    await answerDoubts(stage);
  }
  if (RETESTS.season === season.slug) {
    await testAgain(stage, seed, plan);
    await answerDoubts(stage);
  }
  if (DRAFT.season === season.slug) await beginDraft(stage, season);
  progress(`${season.name}: ${plan.entries.length} variants, ${plan.handIns.length} submissions handed in and looked at`);
}

/** Brings the house up to the beginning of a season: versions that came into force since the one before. */
export async function prepareMethods(stage: Stage, after: string, { opensOn }: SeasonPlan['season']): Promise<void> {
  await enterMethodVersions(stage.people.editor, after, opensOn);
}

/** A tester has begun to write and not handed in. */
async function beginDraft({ people, blindCodes }: Stage, season: SeasonPlan['season']): Promise<void> {
  const benchDay = season.benchDays.at(-1) ?? season.opensOn;
  const { method, tester, note } = DRAFT;
  const spool = noted(blindCodes, spoolKey(season, { slug: DRAFT.variant }, 'a'));
  const content = {
    edition: season.slug,
    spool,
    method,
    methodVersion: versionOn(method, benchDay),
    benchDay,
    instruments: ['R1', 'A1'],
    note,
  };
  await people.testers[tester]?.post('/v1/drafts', { body: { content } });
}

/** Takes out what was found wrong before a bench day and is still in. */
async function withdraw(stage: Stage, { handIns }: SeasonPlan, before: string): Promise<void> {
  const { editor } = stage.people;
  const due = handIns.flatMap(({ task, withdrawal }) =>
    withdrawal && withdrawal.on < before && task.benchDay < withdrawal.on ? [{ key: task.key, withdrawal }] : [],
  );
  for (const { key, withdrawal } of due) {
    const reference = noted(stage.references, key);
    const { version, state } = await editor.get<{ version: number; state: string }>(`/v1/submissions/${reference}`);
    if (state !== 'accepted') continue;
    stage.clock.moveTo(withdrawal.on, 12);
    const { id } = await proposeTo(stage, { kind: 'withdrawal', submission: reference, reason: withdrawal.reason });
    await editor.post(`/v1/submissions/${reference}/withdrawal`, { version, body: { proposal: id } });
  }
}
