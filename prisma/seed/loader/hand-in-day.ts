import { handInFile } from '../bench/hand-in-file.js';
import type { DemoHandIn } from '../season/hand-in.js';
import type { HouseClient } from './house-client.js';
import { noted } from './stage.js';
import type { Stage } from './stage.js';

interface Summary {
  readonly reference: string;
  readonly spool: string;
}

/** Every tester hands in the day's file; one made out for another unit is a file of its own. What is sent twice comes after. */
export async function handInDay(stage: Stage, handIns: readonly DemoHandIn[]): Promise<void> {
  const [again, once] = [handIns.filter(isTwice), handIns.filter((handIn) => !isTwice(handIn))];
  for (const file of Map.groupBy(once, fileOf).values()) await handInOneFile(stage, file);
  for (const handIn of again) {
    const summary = await testerOf(stage, handIn).post<Summary>('/v1/submissions', { body: contentOf(stage, handIn) });
    stage.references.set(handIn.task.key, summary.reference);
  }
}

/** Hands in what a check must refuse as a whole. */
export async function handInBlocked(stage: Stage, handIns: readonly DemoHandIn[], code: string): Promise<void> {
  const first = handIns[0];
  if (!first) return;
  const { status, body } = await testerOf(stage, first).refusal('/v1/submissions', { csv: fileText(stage, handIns) });
  if (status !== 422 || !body.includes(code))
    throw new Error(`A file with ${code} was answered by ${status}, expected 422 that names the check: ${body.slice(0, 500)}`);
}

export const contentOf = (stage: Stage, { task, content }: DemoHandIn) => ({ ...content, spool: noted(stage.blindCodes, task.spool) });

export function testerOf({ people }: Stage, { task }: DemoHandIn): HouseClient {
  const tester = people.testers[task.tester];
  if (!tester) throw new Error(`Task ${task.key} names tester ${task.tester}; the house has ${people.testers.length}.`);
  return tester;
}

const isTwice = ({ task }: DemoHandIn): boolean => task.key.endsWith('/twice');

const fileOf = ({ task, content }: DemoHandIn): string => `${task.tester} ${content.specimens[0]?.readings[0]?.unit ?? ''}`;

const fileText = (stage: Stage, handIns: readonly DemoHandIn[]): string =>
  handInFile(handIns.map(({ task, content }) => ({ blindCode: noted(stage.blindCodes, task.spool), content })));

async function handInOneFile(stage: Stage, file: readonly DemoHandIn[]): Promise<void> {
  const [first] = file;
  if (!first) return;
  const { submissions } = await testerOf(stage, first).post<{ submissions: Summary[] }>('/v1/submissions', { csv: fileText(stage, file) });
  file.forEach(({ task }, index) => {
    const stored = submissions[index];
    if (stored?.spool !== noted(stage.blindCodes, task.spool)) {
      throw new Error(
        `${task.key} was handed in as number ${index + 1} of its file; found ${stored?.reference ?? 'nothing'} with spool ${stored?.spool ?? 'none'} there.`,
      );
    }
    stage.references.set(task.key, stored.reference);
  });
}
