const WORTH_TELLING_MS = 1000;

/** Says a line to the person at the terminal. */
export function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

/** Runs one step; a step that takes longer than a second is announced, and its duration told at its end. */
export async function step<Result>(title: string, work: () => Promise<Result>): Promise<Result> {
  const startedAt = performance.now();
  const timer = setTimeout(() => {
    say(`${title} …`);
  }, WORTH_TELLING_MS);
  try {
    const result = await work();
    const tookMs = performance.now() - startedAt;
    if (tookMs >= WORTH_TELLING_MS) say(`  done in ${(tookMs / 1000).toFixed(1)} s`);
    return result;
  } finally {
    clearTimeout(timer);
  }
}
