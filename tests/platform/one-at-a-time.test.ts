import { Database } from '../../api/platform/database/database.js';
import { readConfig } from '../../api/config.js';
import { createTestDatabase } from '../support/test-database.js';

test('statements side by side in one transaction wait for one another, and one that fails does not hold up the next', async () => {
  const warnings: string[] = [];
  const note = ({ message }: Error) => warnings.push(message);
  process.on('warning', note);
  const made = await createTestDatabase();
  const database = new Database(readConfig({ DATABASE_URL: made.url }));
  const answers = await database.transaction((tx) =>
    Promise.all([tx.maker.count(), tx.line.count(), tx.$queryRaw`SELECT 1 AS one`, tx.$executeRaw`SET LOCAL statement_timeout = 1000`]),
  );
  expect(answers.slice(0, 3)).toEqual([0, 0, [{ one: 1 }]]);
  await expect(database.transaction((tx) => Promise.all([tx.$queryRaw`SELECT 1 / 0`, tx.$queryRaw`SELECT 1`]))).rejects.toThrow(
    /division by zero/,
  );
  await database.onModuleDestroy();
  await made.drop();
  await new Promise(setImmediate);
  process.off('warning', note);
  expect(warnings).toEqual([]);
});
