import { setTimeout as pause } from 'node:timers/promises';

/** What a reader asks for all the time, and how often the answer was none. */
export class Traffic {
  private isOver = false;
  private running: Promise<void>[] = [];
  private asked = 0;
  private readonly failures: string[] = [];

  constructor(
    private readonly url: string,
    private readonly paths: () => readonly string[],
  ) {}

  /** @param readers how many ask at once, each again as soon as it was answered */
  start(readers = 4): void {
    this.running = Array.from({ length: readers }, (_, nth) => this.read(nth));
  }

  /** Requests so far. */
  get count(): number {
    return this.asked;
  }

  /** Counts from here. */
  async during(work: () => Promise<unknown>): Promise<{ asked: number; failures: string[] }> {
    const before = [this.asked, this.failures.length] as const;
    await work();
    return { asked: this.asked - before[0], failures: this.failures.slice(before[1]) };
  }

  async stop(): Promise<void> {
    this.isOver = true;
    await Promise.all(this.running);
  }

  private async read(nth: number): Promise<void> {
    for (let turn = nth; !this.isOver; turn += 1) {
      const paths = this.paths();
      const path = paths[turn % paths.length] ?? '/';
      const fault = await fetch(this.url + path, { signal: AbortSignal.timeout(15_000) }).then(
        async (answer) => (await answer.arrayBuffer(), answer.ok ? null : String(answer.status)),
        (error: unknown) => (error as Error).message,
      );
      this.asked += 1;
      if (fault !== null) this.failures.push(`${path}: ${fault}`);
      await pause(5);
    }
  }
}
