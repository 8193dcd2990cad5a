import { RIGS } from '../house/instruments.js';
import type { DemoVariant } from '../house/variants.js';
import type { DemoMethodSlug } from '../methods/demo-methods.js';
import { entriesOf } from '../season/seasons.js';
import type { Season } from '../season/seasons.js';
import { spoolKey } from '../season/spools.js';
import { INCOMPLETE, MISLABELLED, SUPPLIED } from '../season/story.js';
import type { BenchTask } from './bench-task.js';

const TESTERS = 5;
const FULL_SEASON_DAYS = 10;

/**
 * Three of the five testers pull on a bench day, each on one rig all day; the other two measure diameters and weigh.
 * A variant's second straight pull is by another tester on another rig and day, its second diameter by another tester: one
 * alone would leave open what a gauge and a hand add, twice over in the section. A third of the entries has a second knot and
 * rub, enough to tell for all.
 */
export function planBench(season: Season, variants: readonly DemoVariant[]): BenchTask[] {
  const tasks = entriesOf(variants, season).flatMap((entry, index) => tasksOf(season, entry, index));
  return tasks.filter(({ day }) => day < season.benchDays.length).sort((one, other) => one.day - other.day);
}

/** Tester at a place of the bench on a day: places 0, 1 and 2 are the rigs. */
export const testerAt = (day: number, place: number): number => (2 * day + place) % TESTERS;

function tasksOf(season: Season, entry: DemoVariant, index: number): BenchTask[] {
  const rig = index % RIGS.length;
  const other = (rig + 1) % RIGS.length;
  const isThird = index % 3 === 0;
  const second = hasSecondSpool(season, entry) ? 'b' : 'a';
  const task = taskMaker(season, entry, index);
  const all = [
    task('straight-pull', 0, rig),
    task('straight-pull', 4, other, second),
    task('palomar-knot', 2, (rig + 2) % RIGS.length),
    ...(isThird ? [task('palomar-knot', 7, rig)] : []),
    task('fg-knot', 6, rig),
    ...(index % 3 === 1 ? [task('fg-knot', 9, other)] : []),
    task('abrasion', 5, other),
    ...(isThird ? [task('abrasion', 8, (rig + 2) % RIGS.length)] : []),
    task('diameter', 1, 3),
    task('diameter', 6, 4),
    ...(index % 2 === 0 ? [task('linear-density', 3, 4)] : []),
    ...(index % 6 === 0 ? [task('linear-density', 8, 3)] : []),
  ];
  return all.filter(
    ({ method }) => !(INCOMPLETE.season === season.slug && INCOMPLETE.variant === entry.slug && INCOMPLETE.method === method),
  );
}

/** Tasks of an entry, numbered within their method. */
function taskMaker(season: Season, entry: DemoVariant, index: number) {
  const counts = new Map<string, number>();
  return (method: DemoMethodSlug, dayShift: number, place: number, letter = 'a'): BenchTask => {
    const day = (index + dayShift) % FULL_SEASON_DAYS;
    const number = (counts.get(method) ?? 0) + 1;
    counts.set(method, number);
    return {
      key: `${season.slug}/${entry.slug}/${method}/${number}`,
      season: season.slug,
      variant: entry.slug,
      spool: spoolKey(season, entry, letter),
      method,
      day,
      benchDay: season.benchDays[day] ?? '',
      tester: testerAt(day, place),
      rig: RIGS[place] ?? null,
    };
  };
}

const hasSecondSpool = (season: Season, { slug }: DemoVariant): boolean =>
  (MISLABELLED.season === season.slug && MISLABELLED.label === slug) || (SUPPLIED.season === season.slug && SUPPLIED.variant === slug);
