import { toSpecimensInSi } from '../../api/readings/readings-si.js';
import { submissionContent } from '../../api/contract/submission-content.js';

const PULL = { number: 1, readings: [{ role: 'breakingForce', value: '36.10', unit: 'lbf' }] };
const GOOD = {
  edition: '2026',
  spool: 'K7M2QX4',
  method: 'straight-pull',
  methodVersion: 1,
  benchDay: '2026-01-17',
  zone: 'Europe/Lisbon',
  instruments: ['R1'],
  ambient: { temperature: { value: '-3.5', unit: '°C' }, humidityPercent: '100' },
  seenLabel: false,
  specimens: [PULL],
};
const withReading = (change: object) => ({ ...GOOD, specimens: [{ number: 1, readings: [{ ...PULL.readings[0], ...change }] }] });
const faultsOf = (content: object) =>
  (submissionContent.safeParse(content).error?.issues ?? []).map(({ path, message }) => [path.join('/'), message] as const);
const station = (wide: string, narrow: string, unit = 'mm') => [
  { role: 'wideDiameter', station: 1, value: wide, unit: 'mm' },
  { role: 'narrowDiameter', station: 1, value: narrow, unit },
];

test('a submission is taken with its numbers as typed', () => {
  const content = submissionContent.parse(GOOD);
  expect(content.specimens[0]).toEqual({
    number: 1,
    condition: 'untreated',
    validity: 'valid',
    readings: [{ role: 'breakingForce', station: null, value: '36.10', unit: 'lbf' }],
  });
});

test.each([
  ['an unknown field', { ...GOOD, maker: 'x' }, '', 'no such field here'],
  ['an unknown field of a specimen', { ...GOOD, specimens: [{ ...PULL, colour: 'x' }] }, 'specimens/0', 'no such field here'],
  ['a number instead of its text', withReading({ value: 36.1 }), 'specimens/0/readings/0/value', 'expected text'],
  ['a negative force', withReading({ value: '-36.1' }), 'specimens/0/readings/0/value', 'above zero'],
  ['no force', withReading({ value: '0.00' }), 'specimens/0/readings/0/value', 'above zero'],
  ['NaN', withReading({ value: 'NaN' }), 'specimens/0/readings/0/value', 'decimal number with a point'],
  ['a decimal comma', withReading({ value: '36,1' }), 'specimens/0/readings/0/value', 'decimal number with a point'],
  ['an exponent', withReading({ value: '3.6e1' }), 'specimens/0/readings/0/value', 'decimal number with a point'],
  ['an unknown unit', withReading({ unit: 'pounds' }), 'specimens/0/readings/0/unit', 'N, kN, lbf'],
  ['a unit of another dimension', withReading({ unit: 'mm' }), 'specimens/0/readings/0/unit', 'a breaking force is a force'],
  ['a unit that is a name inside the language', withReading({ unit: 'constructor' }), 'specimens/0/readings/0/unit', 'N, kN, lbf'],
  ['no instrument', { ...GOOD, instruments: [] }, 'instruments', 'at least one instrument'],
  ['no specimen', { ...GOOD, specimens: [] }, 'specimens', 'at least one specimen'],
  ['no reading', { ...GOOD, specimens: [{ number: 1, readings: [] }] }, 'specimens/0/readings', 'at least one reading'],
  ['a specimen twice', { ...GOOD, specimens: [PULL, PULL] }, 'specimens/1/number', 'twice'],
  [
    'a reading twice',
    { ...GOOD, specimens: [{ number: 1, readings: [...PULL.readings, ...PULL.readings] }] },
    'specimens/0/readings/1',
    'twice',
  ],
  [
    'an invalid specimen without a reason',
    { ...GOOD, specimens: [{ ...PULL, validity: 'invalid' }] },
    'specimens/0/invalidReason',
    'says why',
  ],
  [
    'a valid specimen with a reason',
    { ...GOOD, specimens: [{ ...PULL, invalidReason: 'slipped' }] },
    'specimens/0/invalidReason',
    'says why',
  ],
  ['a zone that is none', { ...GOOD, zone: 'Europe/Nowhere' }, 'zone', 'time zone'],
  ['a day that is none', { ...GOOD, benchDay: '2026-02-30' }, 'benchDay', 'a day written'],
  [
    'more than all the moisture there is',
    { ...GOOD, ambient: { ...GOOD.ambient, humidityPercent: '100.1' } },
    'ambient/humidityPercent',
    '0 to 100',
  ],
  [
    'a narrowest above the widest',
    { ...GOOD, specimens: [{ number: 1, readings: station('0.25', '0.26') }] },
    'specimens/0/readings/1/value',
    'exchange or repeat',
  ],
  [
    'the same in other units',
    { ...GOOD, specimens: [{ number: 1, readings: station('0.25', '251', 'µm') }] },
    'specimens/0/readings/1/value',
    'exchange or repeat',
  ],
])('%s is refused with its place and a sentence', (_, content, path, words) => {
  expect(faultsOf(content)).toEqual([[path, expect.stringContaining(words)]]);
});

test('a round station, and the same diameter in two units, are taken', () => {
  expect(faultsOf({ ...GOOD, specimens: [{ number: 1, readings: station('0.25', '0.25') }] })).toEqual([]);
  expect(faultsOf({ ...GOOD, specimens: [{ number: 1, readings: station('0.25', '250', 'µm') }] })).toEqual([]);
});

test('all faults are listed at once', () => {
  const content = { ...withReading({ value: '-1', unit: 'mm' }), instruments: [], zone: 'Nowhere' };
  expect(
    faultsOf(content)
      .map(([path]) => path)
      .toSorted(),
  ).toEqual(['instruments', 'specimens/0/readings/0/unit', 'specimens/0/readings/0/value', 'zone']);
});

test('readings get exact SI values beside what was typed', () => {
  const [specimen] = toSpecimensInSi(submissionContent.parse(GOOD).specimens);
  // 36.10 lbf · 4.4482216152605 N/lbf (NIST SP 811, appendix B), multiplied by hand
  expect(specimen!.readings[0]).toEqual({
    role: 'breakingForce',
    station: null,
    enteredText: '36.10',
    enteredUnit: 'lbf',
    valueSi: '160.58080031090405',
    siUnit: 'N',
  });
});
