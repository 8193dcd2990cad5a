import { letOthersIn } from '../../api/submissions/examine/let-others-in.js';
import { ExaminedBatches } from '../../api/submissions/hand-in/examined-batches.js';
import type { Batch } from '../../api/submissions/hand-in/examined-batches.js';
import { FaultTally, IntakeTally } from '../../api/submissions/intake/intake-tally.js';

const subject = (id: string) => ({ edition: { id, slug: id } }) as Parameters<IntakeTally['count']>[0]['subject'];

test('a control pull that comes in between two batches is not missed: what was seen first counts', () => {
  const tally = new IntakeTally();
  tally.count({ subject: subject('2026'), contentDigest: 'a', rigRecords: new Map([['R1', 4]]) });
  tally.count({ subject: subject('2026'), contentDigest: 'b', rigRecords: new Map([['R1', 5]]) });
  tally.count({ subject: subject('2027'), contentDigest: 'c', rigRecords: new Map([['R2', 1]]) });
  expect([...tally.rigsSeen]).toEqual([
    ['R1', 4],
    ['R2', 1],
  ]);
  expect([...tally.good.values()]).toEqual([
    { slug: '2026', count: 2 },
    { slug: '2027', count: 1 },
  ]);
});

test('of many faults the first five thousand are kept, in the order of the rows, and all are counted', () => {
  const tally = new FaultTally();
  const fault = (row: number) => ({ pointer: '', code: 'x', detail: 'x', row });
  tally.add(Array.from({ length: 4999 }, (_, index) => fault(10 + index)));
  tally.add([fault(2), fault(3)], 7);
  expect(tally.count).toBe(5008);
  expect(tally.faults).toHaveLength(5000);
  expect(tally.faults[0]).toMatchObject({ row: 2 });
  expect(tally.faults.map(({ row }) => row)).not.toContain(3);
});

describe('what was examined', () => {
  const batch = (at: number): Batch => ({
    heads: [],
    revisions: [],
    instruments: { statement: '', piece: { at, length: 0 } },
    isFull: true,
  });
  const apart = <Found>(look: () => Promise<Found>) => look();
  const placesOf = async (batches: ExaminedBatches): Promise<number[]> => {
    const places: number[] = [];
    for await (const { instruments } of batches) places.push(instruments.piece.at);
    return places;
  };
  async function* coming(count: number, failure?: Error): AsyncGenerator<Batch, void> {
    for (let at = 0; at < count; at++) yield await Promise.resolve(batch(at));
    if (failure) throw failure;
  }

  test('is there once more for a transaction that is tried again, and examined once', async () => {
    const batches = new ExaminedBatches(coming(3), apart);
    expect(await batches.areMany()).toBe(true);
    for await (const { instruments } of batches) if (instruments.piece.at === 1) break;
    expect(await placesOf(batches)).toEqual([0, 1, 2]);
    expect(await placesOf(batches)).toEqual([0, 1, 2]);
  });

  test('stays broken: what came before a failure never passes for all', async () => {
    const batches = new ExaminedBatches(coming(2, new Error('the database is gone')), apart);
    await expect(placesOf(batches)).rejects.toThrow('gone');
    await expect(placesOf(batches)).rejects.toThrow('gone');
  });
});

test('between submissions that take long to examine others have their turn', async () => {
  const order: string[] = [];
  const examine = (name: string) => {
    const until = performance.now() + 6;
    while (performance.now() < until);
    order.push(name);
    return name.toUpperCase();
  };
  setImmediate(() => order.push('a page'));
  expect(await letOthersIn(['one', 'two'], examine)).toEqual(['ONE', 'TWO']);
  expect(order).toEqual(['one', 'a page', 'two']);
});
