import { readWholeFile } from '../intake/read-whole-file.js';
import { submissionContent } from '../../api/contract/submission-content.js';
import { handInFile } from '../../prisma/seed/bench/hand-in-file.js';
import { inventDemo } from '../../prisma/seed/demo.js';
import type { DemoHandIn } from '../../prisma/seed/season/hand-in.js';

const [winter] = inventDemo().seasons;
const CODES = ['AAAAAA2', 'BBBBBB3', 'CCCCCC4'];

const filed = (handIns: readonly DemoHandIn[]) => handIns.map(({ content }, index) => ({ blindCode: CODES[index]!, content }));
const byUnit = (unit: string) =>
  winter!.handIns.filter(({ content, task }) => content.specimens[0]!.readings[0]!.unit === unit && task.tester === 1);

const read = async (text: string) => {
  const { submissions, faults } = await readWholeFile(
    (async function* () {
      yield Buffer.from(text);
    })(),
  );
  expect(faults).toEqual([]);
  return submissions.map(({ content }) => content);
};

test.each(['N', 'kgf', 'mm', 'g'])('a file of readings in %s reads back as what was written', async (unit) => {
  const handIns = byUnit(unit).slice(0, 3);
  expect(handIns.length).toBeGreaterThan(0);
  const contents = await read(handInFile(filed(handIns)));
  expect(contents).toEqual(filed(handIns).map(({ blindCode, content }) => submissionContent.parse({ ...content, spool: blindCode })));
});

test('a note with a comma and quotes survives', async () => {
  const content = { ...byUnit('N')[0]!.content, note: 'Upper grip, "left" side,\nsecond turn' };
  const [back] = await read(handInFile([{ blindCode: 'AAAAAA2', content }]));
  expect(back!.note).toBe(content.note);
});

test('two units in one column are refused', () => {
  expect(() => handInFile(filed([byUnit('N')[0]!, byUnit('kgf')[0]!]))).toThrow(/two files/);
});

test('a file names blind codes and no variant', () => {
  const text = handInFile(filed(byUnit('N').slice(0, 3)));
  for (const { variant } of byUnit('N').map(({ task }) => task)) expect(text).not.toContain(variant);
});
