import { setImmediate } from 'node:timers/promises';

/** A page that is asked for meanwhile waits no longer, nor does what is being stored. */
const AT_ONCE_MS = 5;

/** Makes one of each, as map does, and lets other work of the program in between: a long file is looked at for seconds. */
export async function letOthersIn<One, Made>(all: readonly One[], make: (one: One, index: number) => Made): Promise<Made[]> {
  const made: Made[] = [];
  let since = performance.now();
  for (const [index, one] of all.entries()) {
    made.push(make(one, index));
    if (performance.now() - since < AT_ONCE_MS) continue;
    await setImmediate();
    since = performance.now();
  }
  return made;
}
