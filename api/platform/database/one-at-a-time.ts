import type { PrismaPg } from '@prisma/adapter-pg';

type Connected = Awaited<ReturnType<PrismaPg['connect']>>;
type Begun = Awaited<ReturnType<Connected['startTransaction']>>;

/**
 * Prisma asks for parts of one answer side by side, also within a transaction, which has but one connection: the driver would queue them
 * with a warning, and its next major version refuses. So each statement of a transaction waits for the one before.
 */
export function oneAtATime(factory: PrismaPg): PrismaPg {
  const connect = factory.connect.bind(factory);
  factory.connect = async () => {
    const connected = await connect();
    const startTransaction = connected.startTransaction.bind(connected);
    connected.startTransaction = async (...level) => inTurn(await startTransaction(...level));
    return connected;
  };
  return factory;
}

function inTurn(transaction: Begun): Begun {
  let before: Promise<unknown> = Promise.resolve();
  const queued = <Query, Answer>(run: (query: Query) => Promise<Answer>) => {
    return (query: Query): Promise<Answer> => {
      const answer = before.then(() => run(query));
      before = answer.catch(() => undefined);
      return answer;
    };
  };
  transaction.queryRaw = queued(transaction.queryRaw.bind(transaction));
  transaction.executeRaw = queued(transaction.executeRaw.bind(transaction));
  return transaction;
}
