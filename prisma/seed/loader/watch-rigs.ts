import { baselinePullsOf, controlPullsOf } from '../bench/control-pulls.js';
import type { DemoControlPull } from '../bench/control-pulls.js';
import { demoControlLines } from '../house/control-lines.js';
import type { DemoHandIn } from '../season/hand-in.js';
import { OUT_OF_CONTROL_STANDS } from '../house/finding-words.js';
import type { Stage } from './stage.js';

/** A new control line of the season, with the pulls that its limits are taken from. */
export async function beginControlLine(stage: Stage, seed: number, season: string): Promise<void> {
  for (const line of demoControlLines.filter((one) => one.season === season)) {
    const { code, name, lot, words } = line;
    await stage.people.editor.post('/v1/control-lines', { body: { code, name, lot, words } });
    for (const round of baselinePullsOf(seed, line)) await handInPulls(stage, round);
  }
}

/** Whoever stands at a rig begins the day with the control line. */
export const pullControlLine = (stage: Stage, seed: number, handIns: readonly DemoHandIn[]): Promise<void> =>
  handInPulls(stage, controlPullsOf(seed, handIns));

async function handInPulls({ people }: Stage, pulls: readonly DemoControlPull[]): Promise<void> {
  for (const { tester, ...pull } of pulls) await people.testers[tester]?.post('/v1/control-pulls', { body: pull });
}

interface Doubted {
  readonly reference: string;
  readonly version: number;
  readonly findings: readonly { readonly id: string; readonly severity: string; readonly resolution: string | null }[];
}

/** What was accepted and came into doubt by a control pull, of the winter before too, is looked at again, and answered in writing. */
export async function answerDoubts({ people }: Stage): Promise<void> {
  const [reviewer] = people.reviewers;
  if (!reviewer) return;
  const { items } = await reviewer.get<{ items: { reference: string }[] }>('/v1/submissions?inDoubt=true&limit=200');
  for (const { reference } of items) {
    const { version, findings } = await reviewer.get<Doubted>(`/v1/submissions/${reference}`);
    const open = findings.filter(({ severity, resolution }) => severity === 'held' && resolution === null);
    for (const [index, { id }] of open.entries()) {
      await reviewer.post(`/v1/submissions/${reference}/findings/${id}/resolution`, {
        version: version + index,
        body: { words: OUT_OF_CONTROL_STANDS },
      });
    }
  }
}
