/** What was opened while starting, so that it can be closed in the opposite order, also in the middle of a start. */
export class ClosingList {
  private readonly closers: (() => Promise<void>)[] = [];
  private hasBegun = false;

  /** True from the moment that closing began; what fails from then on fails because of it. */
  isClosing(): boolean {
    return this.hasBegun;
  }

  /** Call it before the thing is open: a close that comes in between waits for it. */
  add(close: () => Promise<void>): void {
    this.closers.push(close);
  }

  /** Closes everything, the newest first; one failure does not keep the others from closing. */
  async closeAll(): Promise<void> {
    this.hasBegun = true;
    for (let close = this.closers.pop(); close !== undefined; close = this.closers.pop()) {
      await close().catch((error: unknown) => {
        console.error(error);
      });
    }
  }
}
