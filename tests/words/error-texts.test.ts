/** Every sentence that answers a mistake: of the list that `npm run error-texts` prints. */
import { globSync } from 'node:fs';
import { ERROR_CATALOGUE } from '../../api/error-catalogue.js';
import { errorTexts } from '../support/error-texts.js';

const TEXTS = errorTexts();
const at = ({ file, line, text }: (typeof TEXTS)[number]): string => `${file}:${line} ${text}`;

/** Sentences of zod, of the database driver, of Node and of the CSV reader. */
const OF_A_LIBRARY =
  /\bInvalid (input|value|type)\b|Unrecognized key|Too (small|big):|ENOENT|ECONN|\bPrisma|violates|Record is inconsistent|Unexpected token/;
/** A name out of the code where a word belongs: twoWords: or twoWords( at the beginning. */
const OF_THE_CODE = /^[a-z]+([A-Z]\w*)+[:(]|\bundefined\b|\bNaN\b|\[object |\bnull\b/;
/** What to do, or what was meant: a verb that begins a sentence or a clause, or "expected". */
const WAY_ON =
  /expected|\b(GET|POST|PUT|PATCH|DELETE) \/v1|‹whatToDo›|(^|[.:;,›]\s+|\b(or|and|then|first|please)\s+)(add|answer|ask|call|change|choose|close|correct|enter|enable|exchange|export|give|go|hand|have|keep|leave|look|make|merge|name|pin|propose|pull|put|read|refuse|remove|repeat|save|say|send|set|sort|split|start|state|take|tell|type|use|wait|withdraw|write)\b/i;

test('there are as many as there were, or the list has lost sight of some', () => {
  expect(TEXTS.length).toBeGreaterThan(600);
});

test('none is of a library, none names a function; measurements name one, which people are not shown', () => {
  expect(TEXTS.filter(({ text }) => OF_A_LIBRARY.test(text)).map(at)).toEqual([]);
  expect(TEXTS.filter(({ file, text }) => !file.startsWith('api/measurement/') && OF_THE_CODE.test(text)).map(at)).toEqual([]);
});

test('what is wrong with an input says what was meant, or what to do', () => {
  // A fault has a code of lower-case words; what a check looks for is a description, and its finding has an "expected" beside it.
  const faults = TEXTS.filter(
    ({ file, code, text }) => !file.startsWith('api/checks/') && /^[a-z]+(_[a-z]+)+$/.test(code) && /^[A-Z"‹].* .*[.?]/.test(text),
  );
  expect(faults.length).toBeGreaterThan(60);
  expect(faults.filter(({ text }) => !WAY_ON.test(text) && !text.includes('REMEDY')).map(at)).toEqual([]);
});

test('every kind of problem says what to do', () => {
  expect(ERROR_CATALOGUE.filter(({ explains }) => !WAY_ON.test(explains) && !/what to do/.test(explains))).toEqual([]);
});

test('every kind of problem is in the catalogue, is a sentence, and says what it means beyond its title', async () => {
  const files = globSync('api/*/**/*.errors.ts');
  const declared: string[] = [];
  for (const file of files) {
    const [kinds] = Object.values(
      (await import(`../../${file.replace(/\.ts$/, '.js')}`)) as Record<string, Record<string, { code: string }>>,
    );
    declared.push(...Object.keys(kinds!));
  }
  expect(ERROR_CATALOGUE.map(({ code }) => code).sort()).toEqual(declared.sort());
  expect(
    ERROR_CATALOGUE.filter(
      ({ title, explains }) => !/^[A-Z].*[.]$/s.test(explains) || explains.split(' ').length < 4 || /[.]$/.test(title),
    ),
  ).toEqual([]);
});
