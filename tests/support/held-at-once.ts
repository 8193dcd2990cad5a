import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

setFlagsFromString('--expose-gc');
const collectGarbage = runInNewContext('gc') as () => void;

/** Counts how many of the things that passed by are still held, whenever more may be than should. */
export class HeldAtOnce {
  private passed: WeakRef<object>[] = [];
  most = 0;

  constructor(private readonly limit: number) {}

  pass<Thing extends object>(thing: Thing): Thing {
    this.passed.push(new WeakRef(thing));
    if (this.passed.length > this.limit) {
      collectGarbage();
      this.passed = this.passed.filter((one) => one.deref() !== undefined);
      this.most = Math.max(this.most, this.passed.length);
    }
    return thing;
  }
}
