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
