/** What was opened while starting, so that it can be closed in the opposite order, also in the middle of a start. */
export class ClosingList {
  private readonly closers: (() => Promise<void>)[] = [];

  /** Call it before the thing is open: a close that comes in between waits for it. */
  add(close: () => Promise<void>): void {
    this.closers.push(close);
  }

  /** Closes everything, the newest first; one failure does not keep the others from closing. */
  async closeAll(): Promise<void> {
    for (let close = this.closers.pop(); close !== undefined; close = this.closers.pop()) {
      await close().catch((error: unknown) => {
        console.error(error);
      });
    }
  }
}
