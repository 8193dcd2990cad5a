/** What a dropped or pasted table is read as: readings, the record of a pull, days, spools. */
import { lineName } from '../../api/contract/line-name.js';
import { readingsFrom } from '../../site/desk/src/bench/readings-from.js';
import { schemeRequest } from '../../api/contract/endpoints/schemes.js';
import { cellsFor, isRecord, peakOf, readingsIn, unitsOf } from '../../site/desk/src/bench/dropped-readings.js';
import { columnsOf } from '../../site/desk/src/bench/method-columns.js';
import { categoryChoices, schemeFrom } from '../../site/desk/src/season/category-choices.js';
import { pastedRows } from '../../site/desk/src/catalogue/pasted-rows.js';
import { cellsOfText } from '../../site/desk/src/table/read-table.js';
import { dayAs, foreignDays, withDays } from '../../site/desk/src/table/reread-days.js';
import { withoutRoutes } from '../../site/desk/src/words/without-routes.js';
import { signalWords } from '../../site/desk/src/words/signal-words.js';
import { WESTERN_ELECTRIC_RULES } from '../../api/measurement/drift/run-rules.js';
import { METHOD_OF_FINDING } from '../../site/desk/src/words/method-help.js';
import { CHECKS } from '../../api/checks/check-list.js';
import { METHOD_VERSION } from '../support/bench.js';
import { METHOD_STARTERS } from '../../site/desk/src/methods/method-starters.js';
import { versionFields, versionOf } from '../../site/desk/src/methods/version-texts.js';
import type { FieldOptions } from '../../site/desk/src/parts/field-options.js';

test('a line that says its maker is not called by the maker’s name once more', () => {
  const named = (maker: string, line: string) => lineName({ name: maker }, { name: line });
  expect([
    named('Quaymade', 'Quaymade 8'),
    named('Quaymade', 'quaymade'),
    named('Quay', 'Quaymade 8'),
    named('Tidewick', 'Brinearrow'),
  ]).toEqual(['Quaymade 8', 'quaymade', 'Quay Quaymade 8', 'Tidewick Brinearrow']);
});

test('what a gauge types into a form: its unit is taken where it is a force, a mass is left to be refused', () => {
  const fields = Object.fromEntries(['83,1', '83.1 N', '18.7 lbf', '18.7 lb', ''].map((text, i) => [i, { text }]));
  expect(readingsFrom(fields, 'N')).toEqual([
    { text: '83.1', unit: 'N' },
    { text: '83.1', unit: 'N' },
    { text: '18.7', unit: 'lbf' },
    { text: '18.7 lb', unit: 'N' },
    { text: '', unit: 'N' },
  ]);
});

const COLUMNS = columnsOf(METHOD_VERSION as never);
const read = (text: string) => cellsOfText(text).then((cells) => readingsIn(cells, COLUMNS));

test('columns are found by their words in any order, with the unit of the header; a running number is none', async () => {
  const found = await read('No.;Time [s];Peak force [lbf]\n1;18,2;36,10\n2;17,9;35,8\n');
  expect(found.sources).toEqual([
    { role: 'breakingForce', index: 2, unit: 'lbf' },
    { role: 'timeToBreak', index: 1, unit: 's' },
  ]);
  expect(unitsOf(found)).toEqual({ breakingForce: 'lbf', timeToBreak: 's' });
  expect(cellsFor(found, COLUMNS, null)).toEqual([
    ['36,10 lbf', '18,2 s'],
    ['35,8 lbf', '17,9 s'],
  ]);
});

test('without words the columns are taken in their order, and no unit is made up', async () => {
  const found = await read('1\t90.1\t18.2\n2\t91.4\t17.9\n');
  expect(found.sources.map(({ index, unit }) => [index, unit])).toEqual([
    [1, null],
    [2, null],
  ]);
});

test('zeros that a workbook lost are put back where somebody says how many decimals the gauge showed', async () => {
  const found = await read('Force [N]\n36.1\n36\n36.125\n');
  expect(cellsFor(found, COLUMNS.slice(0, 1), 2)).toEqual([['36.10 N'], ['36.00 N'], ['36.125 N']]);
});

test('many rows that run forward are the record of a pull; its peak is told as it stands', async () => {
  const rows = Array.from({ length: 40 }, (_, i) => `${i / 10};${(3 * Math.min(i, 35)).toFixed(1).replace('.', ',')}`);
  const record = await cellsOfText(['Extension (mm);Force (N)', ...rows].join('\n'));
  expect(isRecord(record)).toBe(true);
  expect(peakOf(record)).toEqual({ text: '105,0', unit: 'N' });
  expect(isRecord([...record.slice(0, 20)])).toBe(false);
  expect(isRecord([...record, ['0', '1']])).toBe(false);
});

test('a day is read as it is said to be meant, and never as a day that there is not', () => {
  expect([
    dayAs('3.4.2026', 'dayFirst'),
    dayAs('3/4/26', 'monthFirst'),
    dayAs('31.4.2026', 'dayFirst'),
    dayAs('13/4/2026', 'monthFirst'),
  ]).toEqual(['2026-04-03', '2026-03-04', null, null]);
  const cells = [
    ['bench day', 'note'],
    ['3.4.2026', '1.2.2026'],
  ];
  expect(foreignDays(cells)).toEqual({ columns: [0], first: '3.4.2026' });
  expect(withDays(cells, [0], 'dayFirst')[1]).toEqual(['2026-04-03', '1.2.2026']);
  expect(foreignDays([['bench day'], ['2026-04-03']]).columns).toEqual([]);
});

test('a pasted table of spools says of each row what is wrong, by column', () => {
  const { rows, unknown, missing } = pastedRows([
    ['Maker', 'line', 'size', 'colour', 'claim', 'day', 'place', 'tint'],
    ['Quaymade', 'Quaymade 8', 'PE 1', 'grey', '20', '2026-02-01', 'A shop', ''],
    ['Quaymade', '', 'PE 2', 'grey', '', '1.2.2026', 'A shop', ''],
    ['', '', '', '', '', '', '', ''],
  ]);
  expect([unknown, missing, rows.length]).toEqual([['tint'], [], 2]);
  expect(rows[0]!.request).toMatchObject({
    line: { name: 'Quaymade 8', material: 'UHMWPE' },
    claim: { quantity: 'breakingForce', printed: { text: '20', unit: 'lbf' }, seenOn: '2026-02-01' },
  });
  expect(rows[1]!.request).toBeNull();
  expect(rows[1]!.faults.map((fault) => fault.split(':')[0])).toEqual(expect.arrayContaining(['line', 'day']));
  expect(pastedRows([['maker'], ['Quaymade']]).missing).toEqual(['line', 'size', 'colour', 'day', 'place']);
});

test('what follows from a method leads to it: every check that looks at the method has its part of the page and its sentence', () => {
  const ofMethod = CHECKS.filter(({ looksAt }) => looksAt.includes('method')).map(({ code }) => code);
  expect(Object.keys(METHOD_OF_FINDING).sort()).toEqual(ofMethod.sort());
});

test('what a control chart signals is told in words', () => {
  expect(WESTERN_ELECTRIC_RULES.map((rule) => signalWords([rule])).filter((words) => !/^[a-z]+ [a-z0-9σ ]+$/.test(words))).toEqual([]);
  expect(signalWords(['oneBeyond3Sigma', 'eightOnOneSide'])).toBe('one beyond 3σ, eight on one side');
});

test.each([
  ['A reviewer accepts each: POST /v1/submissions/{reference}/reviews.', 'A reviewer accepts each.'],
  [
    'A reviewer answers: POST /v1/submissions/{reference}/findings/{id}/resolution; or one proposes: POST /v1/proposals.',
    'A reviewer answers; or one proposes.',
  ],
  ['Change the rules (PATCH /v1/editions/{edition} with divisions), or not.', 'Change the rules, or not.'],
  ['Pin versions: PATCH /v1/editions/{edition} with methods. Or move the days.', 'Pin versions. Or move the days.'],
])('on the desk “%s” names no address for programs', (words, read) => {
  expect(withoutRoutes(words)).toBe(read);
});

test('a scheme is offered what the methods of the house yield, whatever they are called, two knots each by its own name', () => {
  const version = (slug: string, series: readonly object[], areaFrom: string | null = null) =>
    ({ slug, name: `The ${slug}`, series, parameters: { areaFrom } }) as unknown as Parameters<typeof categoryChoices>[0][number];
  const pull = { code: 'plain', kind: 'breakingForce', treatment: null };
  const knot = (name: string) => ({ code: 'tied', kind: 'breakingForce', treatment: { kind: 'knot', name, words: `${name}, wetted` } });
  const round = { code: 'round', kind: 'diameterAlongStations', stations: 5 };
  const house = [
    version('house-break', [pull]),
    version('ring', [pull, knot('Palomar')]),
    version('leader', [pull, knot('FG')]),
    version('gauge', [round], 'circle'),
    version('bare-gauge', [round]),
  ];
  const found = categoryChoices(house);
  expect(found.map(({ name, quantity, method, series, section }) => [name, quantity, method, series, section?.method])).toEqual([
    ['Breaking stress', 'apparentStress', 'house-break', 'plain', 'gauge'],
    ['Strength against the label', 'strengthHonesty', 'house-break', 'plain', undefined],
    ['Knot retention, Palomar', 'retention', 'ring', 'tied', undefined],
    ['Knot retention, FG', 'retention', 'leader', 'tied', undefined],
  ]);
  expect(schemeRequest.safeParse(schemeFrom('all', 'All', found)).error).toBeUndefined();
  const twice = categoryChoices([...house, version('second-break', [pull])]).map(({ name }) => name);
  expect(twice.filter((name) => name.startsWith('Strength'))).toEqual([
    'Strength against the label, The house-break',
    'Strength against the label, The second-break',
  ]);
});

test.each(METHOD_STARTERS)(
  'the form of a next version shows what $slug says, and makes it again of it; what is written at a place stands there',
  ({ slug, name, version }) => {
    const base = {
      ...version,
      ...{ id: '', slug, name, number: 1, effectiveFrom: '2026-01-01', effectiveUntil: null, isComparableWithPrevious: false },
    };
    const {
      id: _id,
      slug: _slug,
      name: _name,
      number: _number,
      effectiveFrom: _from,
      isComparableWithPrevious: _comparable,
      ...asked
    } = base;
    const fields = versionFields(base);
    const made = (changed: Readonly<Record<string, unknown>>) => versionOf(base, enteredIn(fields, changed));
    expect(made({})).toEqual(asked);
    for (const { name: place, kind } of fields) {
      const written = kind === 'number' ? 13 : 'thus: 9 mm';
      const there = place.split('/').reduce((within: any, key) => within[key], made({ [place]: written }));
      expect([place, there]).toEqual([
        place,
        place === 'parameters/settings' ? [{ name: 'thus', value: '9', unit: 'mm' }] : Array.isArray(there) ? [written] : written,
      ]);
    }
  },
);

/** What stands in the fields of a form, at the places that their names say. */
function enteredIn(fields: readonly FieldOptions[], changed: Readonly<Record<string, unknown>>): any {
  const entered: any = {};
  for (const { name, kind, value } of fields) {
    const keys = name.split('/');
    const within = keys.slice(0, -1).reduce((at: any, key) => (at[key] ??= {}), entered);
    within[keys.at(-1)!] = changed[name] ?? (kind === 'number' ? Number(value) : value);
  }
  return entered;
}
