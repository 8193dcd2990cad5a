/** What stands in the way of a step, all of it at once, each with the way on. */
import { z } from 'zod';

export const obstacleSchema = z.strictObject({
  code: z.string().describe('Stable code'),
  what: z.string().describe('What it is, in words'),
  count: z.int().describe('How many'),
  references: z.array(z.string()).describe('Which, by reference or slug'),
  remedy: z.string().describe('What to do, and where'),
});
export type Obstacle = z.infer<typeof obstacleSchema>;

/** What stands in the way, as faults of a problem: each points to its place in what the board lists. */
export const obstacleFaults = (obstacles: readonly Obstacle[]) =>
  obstacles.map(({ code, what, count, references, remedy }, index) => ({
    pointer: `/standsInTheWay/${index}`,
    detail: `${what}${references.length > 0 ? `: ${references.join(', ')}` : ''}. ${remedy}`,
    code,
    found: String(count),
    expected: 'none',
  }));
