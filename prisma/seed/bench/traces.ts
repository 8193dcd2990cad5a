import { isStrand } from '../house/variants.js';
import type { DemoVariant } from '../house/variants.js';
import { Draws } from '../model/draws.js';
import type { DemoHandIn } from '../season/hand-in.js';
import { SLIPPED } from '../season/story.js';

/** The load frame writes force over extension; the gauges on the stands show a peak alone. Since the winter of 2025/26 the house keeps the records. */
const LOGS = { rig: 'R1', method: 'straight-pull', since: '2026' } as const;
const SAMPLES = 160;
const FREE_LENGTH_MM = 500;
/** Extension at break of each kind of material [%]; common practice, from memory. */
const BREAKS_AT_PERCENT = { braid: [3.4, 4.6], strand: [19, 27] } as const;

export const isLogged = ({ task }: DemoHandIn): boolean =>
  task.rig === LOGS.rig && task.method === LOGS.method && task.season >= LOGS.since;

/** The same of whichever line it was; null where the line is not entered. */
export function traceOf(seed: number, handIn: DemoHandIn, entries: readonly DemoVariant[]): string | null {
  const variant = entries.find(({ slug }) => slug === handIn.task.variant);
  return variant ? traceFile(seed, handIn, isStrand(variant.line)) : null;
}

/** What the load frame wrote of a submission: a row a sample, of all its specimens, with the words that it puts above. */
export function traceFile(seed: number, { task, content }: DemoHandIn, isStrand: boolean): string {
  const draws = new Draws(seed, 'trace', task.key);
  const [low, high] = BREAKS_AT_PERCENT[isStrand ? 'strand' : 'braid'];
  const breakMm = (draws.between(low, high) / 100) * FREE_LENGTH_MM;
  const rows = content.specimens.flatMap(({ number, readings }) => {
    const peakN = Number(readings.find(({ role }) => role === 'breakingForce')?.value ?? 0);
    const slip = SLIPPED.key === task.key && SLIPPED.specimen === number ? SLIPPED.atShare : null;
    return course(peakN, breakMm * draws.normal(1, 0.04), draws.between(0.02, 0.06), slip).map(
      ([mm, forceN]) => `${number};${mm.toFixed(3).replace('.', ',')};${forceN.toFixed(2).replace('.', ',')}`,
    );
  });
  return ['Load frame in the net loft', `Spool;${task.benchDay}`, 'Specimen;Extension;Force', ';[mm];[N]', ...rows, ''].join('\r\n');
}

/** A toe while the turns draw tight, a rise that softens a little, the break; a slip on a capstan gives way for a moment. */
function course(peakN: number, breakMm: number, toe: number, slipAt: number | null): [mm: number, forceN: number][] {
  return Array.from({ length: SAMPLES + 1 }, (_, i) => {
    const share = i / SAMPLES;
    const rise = share < toe ? (0.5 * share ** 2) / toe : share - toe / 2;
    const forceN = (peakN * (rise - 0.12 * rise ** 2)) / (1 - toe / 2 - 0.12 * (1 - toe / 2) ** 2);
    const gives = slipAt !== null && share > slipAt && share < slipAt + 0.05 ? 0.86 : 1;
    return [share * breakMm, i === SAMPLES ? peakN : forceN * gives];
  });
}
