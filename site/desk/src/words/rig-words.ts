/** Three states, never two, each in words. */
export const RIG_STATES = { inControl: 'in control', outOfControl: 'out of control: do not pull', noEvidence: 'no evidence yet' } as const;
