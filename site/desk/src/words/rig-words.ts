/** Four states, never two, each in words. */
export const RIG_STATES = {
  inControl: 'in control',
  outOfControl: 'out of control: do not pull',
  learning: 'in its first pulls: no limits yet',
  noEvidence: 'no evidence yet',
} as const;
