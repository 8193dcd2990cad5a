/** Kinds of instrument that pull, which control pulls watch. */
export const RIG_KINDS: readonly string[] = ['forceGauge', 'loadFrame'];
