/** Whole seconds from now until a time, rounded down; 0 for none and for one that has come. */
export const secondsUntil = (time: Date | null, now: Date): number =>
  time === null ? 0 : Math.max(0, Math.floor((time.getTime() - now.getTime()) / 1000));
