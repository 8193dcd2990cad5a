/** How many requests are on their way at once. */
const AT_ONCE = 4;

/** Does the work for every item, a few at a time; answers in the order of the items. The first failure ends it. */
export async function inParallel<Item, Answer>(items: readonly Item[], work: (item: Item) => Promise<Answer>): Promise<Answer[]> {
  const answers: Answer[] = [];
  let next = 0;
  const worker = async (): Promise<void> => {
    for (let index = next++; index < items.length; index = next++) answers[index] = await work(items[index] as Item);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
  return answers;
}
