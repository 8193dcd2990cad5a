import type { DemoHandIn } from './hand-in.js';
import type { SeasonPlan } from './season-plan.js';

const QUESTION = 'Which of the two capstans was these specimens laid on? The note names one, the sketch shows the other.';

/** The winter that is going on: what came in on the last bench day waits for its review, and one question is open. */
export function withOpenEnds(plan: SeasonPlan): SeasonPlan {
  const lastDay = plan.season.benchDays.length - 1;
  const firstPull = plan.handIns.find(({ task }) => task.day === lastDay && task.rig !== null);
  const handIns = plan.handIns.map((handIn): DemoHandIn => {
    if (handIn.task.day < lastDay) return handIn;
    if (handIn !== firstPull) return { ...handIn, review: null };
    return { ...handIn, review: { decision: 'returned', kind: 'apparatus', specimens: [2, 4], question: QUESTION, reply: null } };
  });
  return { ...plan, handIns };
}
