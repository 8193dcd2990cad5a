import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import '../../api/contract/input-words.js';
import { sentencesOf } from './schema-walk.js';

/** Sentences of zod's own, from its English words (zod/v4/locales/en.js). */
const OF_THE_LIBRARY =
  /\bInvalid\b|\bUnrecognized\b|Too (small|big)|\breceived\b|expected (string|array|object|boolean|undefined)\b|must match/;
/** A name out of the code: twoWords( or twoWords: at the beginning. */
const OF_THE_CODE = /^[a-z]+[A-Z]\w*: |\w\(\)|\[object |\bundefined\b|\bNaN\b/;

/** Schemas of what people send, by their names; they say themselves what a form or a choice of forms is. */
const IS_INPUT = /(Request|Query|Change|Content|Correction|Parameter|Reason|Code)$/;

const FOLDER = 'api/contract';
const modules = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' })
  // Documents of a release are written by the program alone.
  .filter((file) => file.endsWith('.ts') && !file.startsWith('documents'))
  .sort();

const schemasIn = async (file: string): Promise<[string, z.ZodType][]> => {
  const exported = (await import(join('../..', FOLDER, file.replace(/\.ts$/, '.js')))) as Record<string, unknown>;
  return Object.entries(exported).filter((entry): entry is [string, z.ZodType] => entry[1] instanceof z.ZodType);
};

test('no schema answers with a sentence of the library, a name out of the code, or no words at all', async () => {
  let count = 0;
  const bad: string[] = [];
  const general: string[] = [];
  for (const file of modules) {
    for (const [name, schema] of await schemasIn(file)) {
      const sentences = sentencesOf(schema);
      count += sentences.size;
      const where = `${file} ${name}`;
      for (const sentence of sentences) {
        if (sentence.trim() === '' || OF_THE_LIBRARY.test(sentence) || OF_THE_CODE.test(sentence)) bad.push(`${where}: ${sentence}`);
        if (IS_INPUT.test(name) && sentence.includes('that the description')) general.push(`${where}: ${sentence}`);
      }
    }
  }
  expect(bad).toEqual([]);
  expect([...new Set(general)]).toEqual([]);
  expect(count).toBeGreaterThan(1000);
});
