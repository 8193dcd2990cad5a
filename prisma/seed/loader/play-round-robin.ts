import { roundRobinPulls } from '../bench/round-robin-pulls.js';
import type { SeasonPlan } from '../season/season-plan.js';
import { daysAfter } from '../season/seasons.js';
import { ROUND_ROBIN } from '../season/story.js';
import { noted } from './stage.js';
import type { Stage } from './stage.js';

interface RoundRobin {
  readonly version: number;
}

/** Before the first bench day every tester pulls the same spools on one rig. */
export async function playRoundRobin({ people, clock, blindCodes }: Stage, seed: number, { season, spools }: SeasonPlan): Promise<void> {
  const { season: _, variants, rig, ...plan } = ROUND_ROBIN;
  const pulled = variants.map((variant) => {
    const spool = spools.find((one) => one.variant === variant);
    if (!spool) throw new Error(`The round robin names ${variant}, of which the season has no spool.`);
    return { spool, code: noted(blindCodes, spool.key) };
  });
  const { editor, testers } = people;
  const path = `/v1/round-robins/${plan.slug}`;
  const accounts = await Promise.all(testers.map(async (tester) => (await tester.get<{ id: string }>('/v1/accounts/me')).id));
  const { version } = await editor.post<RoundRobin>('/v1/round-robins', {
    body: { ...plan, spools: pulled.map(({ code }) => code), testers: accounts },
  });
  const open = await editor.post<RoundRobin>(`${path}/opening`, { version });
  for (const [index, tester] of testers.entries()) {
    clock.moveTo(daysAfter(season.opensOn, 1 + index), 19);
    for (const { spool, code } of pulled)
      await tester.post(`${path}/cells`, { body: { spool: code, instrument: rig, readings: roundRobinPulls(seed, index, spool) } });
  }
  await editor.post(`${path}/closure`, { version: open.version });
}
