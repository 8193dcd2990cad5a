import { PgBoss } from 'pg-boss';

/** Whoever carries out orders of these queues from now on looks for them once an hour: taken up is what is told of. @returns what ends it */
export function lookSeldom(...queues: readonly string[]): () => void {
  const work = Reflect.get(PgBoss.prototype, 'work') as unknown as (name: string, options: object, handler: unknown) => Promise<string>;
  const looks = { pollingIntervalSeconds: 3600, notifyPollingIntervalSeconds: 3600 };
  const seldom = function (this: PgBoss, name: string, options: object, handler: unknown) {
    return work.call(this, name, { ...options, ...(queues.includes(name) ? looks : {}) }, handler);
  };
  const spy = jest.spyOn(PgBoss.prototype, 'work').mockImplementation(seldom as never);
  return () => spy.mockRestore();
}
