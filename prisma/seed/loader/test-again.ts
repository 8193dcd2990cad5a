import type { BenchTask } from '../bench/bench-task.js';
import { measure } from '../bench/measure.js';
import { testerAt } from '../bench/plan-bench.js';
import { RIGS } from '../house/instruments.js';
import { PLAINLY_ACCEPTED } from '../season/hand-in.js';
import type { DemoHandIn } from '../season/hand-in.js';
import type { SeasonPlan } from '../season/season-plan.js';
import { daysAfter } from '../season/seasons.js';
import { RETESTS } from '../season/story.js';
import { handInDay } from './hand-in-day.js';
import { reviewDay } from './review-day.js';
import type { Stage } from './stage.js';
import { pullControlLine } from './watch-rigs.js';

interface Drawn {
  readonly original: string;
  readonly spool: string;
}

/** The last day before the close: what was drawn by lot is pulled again, by somebody else on another rig. */
export async function testAgain(stage: Stage, seed: number, { season, handIns, spools }: SeasonPlan): Promise<void> {
  const benchDay = daysAfter(season.closesOn, -1);
  stage.clock.moveTo(benchDay, 9);
  const path = `/v1/editions/${season.slug}/retests`;
  const { items } = await stage.people.editor.post<{ items: Drawn[] }>(path, { body: { percent: RETESTS.percent } });
  const again = items.map(({ original, spool: code }): DemoHandIn => {
    const first = handIns.find(({ task }) => stage.references.get(task.key) === original)?.task;
    const spool = spools.find(({ key }) => key === first?.spool);
    if (!first || !spool) throw new Error(`${original} was drawn to be tested again, but the season has not handed it in.`);
    const key = `${first.key}/re-test`;
    const task = elsewhere({ ...first, key, spool: key, benchDay }, season);
    stage.blindCodes.set(task.spool, code);
    return { task, content: measure(seed, task, spool), review: PLAINLY_ACCEPTED, withdrawal: null };
  });
  await pullControlLine(stage, seed, again);
  stage.clock.moveTo(benchDay, 20);
  await handInDay(stage, again);
  await reviewDay(stage, again, season.closesOn);
}

/** Whoever else stands at another rig on the day after the last bench day. */
function elsewhere(task: BenchTask, { benchDays }: SeasonPlan['season']): BenchTask {
  const day = benchDays.length;
  const place = RIGS.findIndex((rig, index) => rig !== task.rig && testerAt(day, index) !== task.tester);
  return { ...task, day, rig: RIGS[place] ?? null, tester: testerAt(day, place) };
}
