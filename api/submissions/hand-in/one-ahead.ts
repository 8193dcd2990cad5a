/**
 * Does work for each item while that for the one before is still going on, so that what takes this processor and what another program does
 * take their time side by side. Ends, also by the first failure, when nothing is at work any more.
 */
export async function oneAhead<Item>(items: AsyncIterable<Item>, work: (item: Item) => Promise<void>): Promise<void> {
  const atWork: Promise<void>[] = [];
  try {
    for await (const item of items) {
      const begun = work(item);
      // Whoever waits for it below hears of its failure.
      begun.catch(() => undefined);
      atWork.push(begun);
      if (atWork.length > 1) await atWork.shift();
    }
    await atWork.shift();
  } finally {
    await Promise.allSettled(atWork);
  }
}
