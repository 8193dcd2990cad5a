import { z } from 'zod';
import { obstacleSchema } from '../obstacle.js';
import { slug } from '../slug.js';
import { exclusionRequest } from './editions.js';

export const boardResponse = z.strictObject({
  edition: slug,
  state: z.string(),
  submissions: z.record(z.string(), z.int()).describe('State → count'),
  inDoubt: z.int().describe('Accepted submissions with a held finding that nobody has answered'),
  standsInTheWay: z
    .array(obstacleSchema)
    .describe('Everything that stands in the way of the next step: of a planned edition its opening, of an open one its closing'),
  entries: z.array(
    z.strictObject({
      variant: slug,
      missing: z.array(z.string()).describe('Categories without a result that counts'),
      needs: z.array(z.string()).describe('What it lacks, in words: "one more rig in knot-retention"'),
      evidence: z
        .array(z.strictObject({ category: slug, specimens: z.int(), submissions: z.int(), testers: z.int(), rigs: z.int() }))
        .describe('What is there in each category'),
      exclusion: exclusionRequest.omit({ variant: true }).nullable(),
      division: slug.optional().describe('Division that it is in; none where there is one, and none while that is not settled'),
      overruled: z.string().optional().describe('Why an editor put it there, whatever the rule says'),
    }),
  ),
});
