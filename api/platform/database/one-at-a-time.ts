import type { PrismaPg } from '@prisma/adapter-pg';
import type pg from 'pg';
import { from as copyFrom } from 'pg-copy-streams';
import type { Copying } from './copying.js';

type Connected = Awaited<ReturnType<PrismaPg['connect']>>;
type Begun = Awaited<ReturnType<Connected['startTransaction']>>;

/**
 * Prisma asks for parts of one answer side by side, also within a transaction, which has but one connection: the driver would queue them
 * with a warning, and its next major version refuses. So each statement of a transaction waits for the one before.
 * @param onBegun is given the way to copy rows in a transaction, which Prisma has none for, in the context of who began it
 */
export function oneAtATime(factory: PrismaPg, onBegun: (copying: Copying) => void): PrismaPg {
  const connect = factory.connect.bind(factory);
  factory.connect = async () => {
    const connected = await connect();
    const startTransaction = connected.startTransaction.bind(connected);
    connected.startTransaction = async (...level) => {
      const begun = await startTransaction(...level);
      onBegun(inTurn(begun));
      return begun;
    };
    return connected;
  };
  return factory;
}

function inTurn(transaction: Begun): Copying {
  let before: Promise<unknown> = Promise.resolve();
  const queued = <Asked extends unknown[], Answer>(run: (...asked: Asked) => Promise<Answer>) => {
    return (...asked: Asked): Promise<Answer> => {
      const answer = before.then(() => run(...asked));
      before = answer.catch(() => undefined);
      return answer;
    };
  };
  transaction.queryRaw = queued(transaction.queryRaw.bind(transaction));
  transaction.executeRaw = queued(transaction.executeRaw.bind(transaction));
  return queued((statement: string, bytes: Uint8Array) => copy(transaction, statement, bytes));
}

/** What goes wrong is told as Prisma's adapter tells it of its own statements. */
async function copy(transaction: Begun, statement: string, bytes: Uint8Array): Promise<void> {
  const { client, onError } = transaction as unknown as { client: pg.PoolClient; onError: (error: unknown) => never };
  try {
    await new Promise<void>((resolve, reject) => {
      client.query(copyFrom(statement)).once('finish', resolve).once('error', reject).end(bytes);
    });
  } catch (error) {
    Reflect.apply(onError, transaction, [error]);
  }
}
