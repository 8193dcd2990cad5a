import { isLogged, traceOf } from '../bench/traces.js';
import type { DemoVariant } from '../house/variants.js';
import type { DemoHandIn } from '../season/hand-in.js';
import { testerOf } from './hand-in-day.js';
import { noted } from './stage.js';
import type { Stage } from './stage.js';

/** What the load frame recorded goes to its submissions, the same evening. */
export async function handInTraces(
  stage: Stage,
  seed: number,
  handIns: readonly DemoHandIn[],
  entries: readonly DemoVariant[],
): Promise<void> {
  for (const handIn of handIns.filter(isLogged)) {
    const csv = traceOf(seed, handIn, entries);
    if (csv === null) continue;
    await testerOf(stage, handIn).post(`/v1/submissions/${noted(stage.references, handIn.task.key)}/traces`, { version: 1, csv });
  }
}
