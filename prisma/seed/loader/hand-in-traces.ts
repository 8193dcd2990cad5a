import { isLogged, traceFile } from '../bench/traces.js';
import { isStrand } from '../house/variants.js';
import type { DemoVariant } from '../house/variants.js';
import type { DemoHandIn } from '../season/hand-in.js';
import { testerOf } from './hand-in-day.js';
import { inParallel } from './in-parallel.js';
import { noted } from './stage.js';
import type { Stage } from './stage.js';

/** What the load frame recorded goes to its submissions, the same evening. */
export async function handInTraces(
  stage: Stage,
  seed: number,
  handIns: readonly DemoHandIn[],
  entries: readonly DemoVariant[],
): Promise<void> {
  await inParallel(handIns.filter(isLogged), async (handIn) => {
    const variant = entries.find(({ slug }) => slug === handIn.task.variant);
    if (!variant) return;
    const csv = traceFile(seed, handIn, isStrand(variant.line));
    await testerOf(stage, handIn).post(`/v1/submissions/${noted(stage.references, handIn.task.key)}/traces`, { version: 1, csv });
  });
}
