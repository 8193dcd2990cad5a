import { Draws } from '../model/draws.js';
import { trueLine } from '../model/true-line.js';
import type { DemoSpool } from '../season/spools.js';
import { ROUND_ROBIN } from '../season/story.js';
import { forceReads } from './conditions.js';
import { forceReading } from './pulls.js';

/** What a tester pulls of one spool of the round robin, as the API takes it. */
export function roundRobinPulls(seed: number, tester: number, { key, contents, lotEffect }: DemoSpool): { text: string; unit: string }[] {
  const { season, rig, specimens } = ROUND_ROBIN;
  const draws = new Draws(seed, 'round robin', tester, key);
  const { breakingForceN, spread } = trueLine(seed, contents);
  const reads = breakingForceN * lotEffect * forceReads({ rig, tester, season, day: -1 });
  return Array.from({ length: specimens }, () => {
    const { value, unit } = forceReading(rig, draws.normal(reads, reads * spread));
    return { text: value, unit };
  });
}
