/** What is known of a rig on a day: three states, never two. */
export type RigEvidence = 'inControl' | 'outOfControl' | 'noEvidence';

/** A pull on the control line. */
export interface ControlPull {
  readonly isInControl: boolean;
}

/**
 * The last control pull of the bench day decides, so that a rig which is out can always be given the pull that clears it.
 * @param pulls control pulls of the rig on the day, oldest first
 */
export function rigEvidence(pulls: readonly ControlPull[]): RigEvidence {
  const last = pulls.at(-1);
  if (!last) return 'noEvidence';
  return last.isInControl ? 'inControl' : 'outOfControl';
}
