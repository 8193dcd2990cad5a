const LOOK_AT_PARENT_MS = 500;

/**
 * Calls `end` once, with the reason, when the program should stop: Ctrl-C, SIGTERM, a closed terminal,
 * or the death of the process that started us (npm's shell dies of a SIGTERM without passing it on).
 */
export function onEnd(end: (reason: string) => void): void {
  const parent = process.ppid;
  let isEnding = false;
  const endOnce = (reason: string) => {
    if (isEnding) return;
    isEnding = true;
    clearInterval(timer);
    end(reason);
  };
  const timer = setInterval(() => {
    if (process.ppid !== parent) endOnce('the process that started it has ended');
  }, LOOK_AT_PARENT_MS);
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => endOnce(signal));
}
