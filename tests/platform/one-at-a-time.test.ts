import type { PrismaPg } from '@prisma/adapter-pg';
import { oneAtATime } from '../../api/platform/database/one-at-a-time.js';

test('statements of one transaction wait for one another, and one that fails does not hold up the next', async () => {
  let [running, most] = [0, 0];
  const run = async (query: string) => {
    most = Math.max(most, ++running);
    await new Promise(setImmediate);
    running--;
    if (query === 'bad') throw new Error('bad');
    return query;
  };
  const factory = { connect: async () => ({ startTransaction: async () => ({ queryRaw: run, executeRaw: run }) }) };
  const connected = await oneAtATime(factory as unknown as PrismaPg, () => undefined).connect();
  const transaction = (await connected.startTransaction()) as unknown as { queryRaw: typeof run; executeRaw: typeof run };
  const answers = await Promise.allSettled([transaction.queryRaw('one'), transaction.executeRaw('bad'), transaction.queryRaw('two')]);
  expect(answers).toMatchObject([{ value: 'one' }, { status: 'rejected' }, { value: 'two' }]);
  expect(most).toBe(1);
});
