import type { BenchTask } from '../bench/bench-task.js';
import { measure } from '../bench/measure.js';
import { planBench, testerAt } from '../bench/plan-bench.js';
import { RIGS } from '../house/instruments.js';
import type { DemoVariant } from '../house/variants.js';
import { applyTwist } from './apply-twist.js';
import { PLAINLY_ACCEPTED } from './hand-in.js';
import type { DemoHandIn } from './hand-in.js';
import { daysAfter, entriesOf } from './seasons.js';
import type { Season } from './seasons.js';
import { spoolsOf } from './spools.js';
import type { DemoSpool } from './spools.js';
import { DRIFT, EXCLUSIONS, EXPIRED, TWISTS } from './story.js';

/** Everything of one winter, in the order in which it is entered. */
export interface SeasonPlan {
  readonly season: Season;
  readonly entries: readonly DemoVariant[];
  readonly spools: readonly DemoSpool[];
  /** By bench day, then as handed in. */
  readonly handIns: readonly DemoHandIn[];
  /** Handed in under an expired certificate: refused as a whole, nothing stored. */
  readonly blocked: readonly DemoHandIn[];
  readonly exclusions: readonly (typeof EXCLUSIONS)[number][];
}

export function planSeason(seed: number, season: Season, variants: readonly DemoVariant[]): SeasonPlan {
  const entries = entriesOf(variants, season);
  const spools = entries.flatMap((entry) => spoolsOf(seed, season, entry, variants));
  const plain = (task: BenchTask): DemoHandIn => {
    const spool = spools.find(({ key }) => key === task.spool);
    if (!spool) throw new Error(`Task ${task.key} names the spool ${task.spool}, which the season has not.`);
    return { task, content: measure(seed, task, spool), review: PLAINLY_ACCEPTED, withdrawal: null };
  };
  const tasks = planBench(season, variants);
  const handIns = tasks.flatMap((task) => {
    const twist = TWISTS[task.key];
    if (twist) return applyTwist(plain(task), twist);
    if (isExpired(task)) return [plain({ ...task, rig: EXPIRED.instead })];
    return isWithdrawn(task)
      ? [{ ...plain(task), withdrawal: { on: DRIFT.foundOn, reason: DRIFT.reason } }, plain(repeated(task, season))]
      : [plain(task)];
  });
  return {
    season,
    entries,
    spools,
    handIns: handIns.toSorted((one, other) => one.task.day - other.task.day),
    blocked: tasks.filter(isExpired).map(plain),
    exclusions: EXCLUSIONS.filter((exclusion) => exclusion.season === season.slug),
  };
}

const isExpired = ({ season, rig, day }: BenchTask): boolean => season === EXPIRED.season && rig === EXPIRED.rig && day === EXPIRED.day;
const isWithdrawn = ({ season, rig, day }: BenchTask): boolean =>
  season === DRIFT.season && rig === DRIFT.rig && day === DRIFT.withdrawnDay;

/** The same pulls a fortnight later, by whoever stands at the rig then. */
function repeated(task: BenchTask, season: Season): BenchTask {
  const day = DRIFT.repeatedDay;
  return {
    ...task,
    key: `${task.key}/again`,
    day,
    benchDay: season.benchDays[day] ?? daysAfter(task.benchDay, 14),
    tester: testerAt(day, RIGS.indexOf(DRIFT.rig)),
  };
}
