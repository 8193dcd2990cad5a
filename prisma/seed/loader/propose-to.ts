import type { Stage } from './stage.js';

/** A reviewer proposes what an editor carries out. */
export async function proposeTo({ people }: Stage, proposal: object): Promise<{ id: string }> {
  const [reviewer] = people.reviewers;
  if (!reviewer) throw new Error('The house has no reviewer; give it at least one.');
  return reviewer.post<{ id: string }>('/v1/proposals', { body: proposal });
}
