import { readTraceFile } from '../../api/submissions/traces/read-trace-file.js';
import { thinOut } from '../../api/readings/traces/thin-out.js';
import { traceFigures } from '../../api/readings/traces/trace-figures.js';
import type { Sample } from '../../api/readings/traces/trace-figures.js';
import { tracePlot } from '../../api/submissions/traces/trace-plot.js';

const lines = (...rows: string[]): string => `${rows.join('\r\n')}\r\n`;
const one = (text: string) => {
  const { traces, faults } = readTraceFile(text);
  expect(faults).toEqual([]);
  expect(traces).toHaveLength(1);
  return traces[0]!;
};

describe('what loggers write is read', () => {
  test.each([
    ['units in brackets, comma', lines('Extension (mm),Force (N)', '0,0', '1.5,12.25', '3,30')],
    ['units in a line of their own, semicolon, decimal comma', lines('Extension;Force', '[mm];[N]', '0;0', '1,5;12,25', '3;30')],
    ['tab, units behind a stroke', lines('Extension / mm\tForce / N', '0\t0', '1.5\t12.25', '3\t30')],
    [
      'twenty lines above, with a byte-order mark',
      `\uFEFF${lines('Bench record', ...Array.from({ length: 18 }, (_, i) => `Setting ${i};${i} mm`), 'Extension [mm];Force [N]', '0;0', '1,5;12,25', '3;30')}`,
    ],
    ['other units, force first', lines('Load kN,Travel m', '0,0', '0.01225,0.0015', '0.03,0.003')],
    ['three columns: extension counts before time', lines('Time (s),Extension (mm),Force (N)', '0,0,0', '0.5,1.5,12.25', '1,3,30')],
    ['a separator at the end of each line', lines('Extension (mm);Force (N);', '0;0;', '1,5;12,25;', '3;30;')],
  ])('%s', (_, text) => {
    const { over, samples, specimen } = one(text);
    expect({ over, specimen }).toEqual({ over: 'extension', specimen: null });
    expect(samples.map(([at, forceN]) => [Number(at.toFixed(9)), Number(forceN.toFixed(9))])).toEqual([
      [0, 0],
      [1.5, 12.25],
      [3, 30],
    ]);
  });

  test('force over time, in the units of the trade', () => {
    const { over, samples } = one(lines('time s,force lbf', '0,0', '10,20'));
    // 1 lbf = 4.4482216152605 N exactly (NIST SP 811, appendix B).
    expect([over, samples[1]]).toEqual(['time', [10, 20 * 4.4482216152605]]);
  });

  test('a column of specimens makes a trace of each', () => {
    const { traces } = readTraceFile(lines('Specimen,Extension (mm),Force (N)', '1,0,0', '1,2,9', '2,0,0', '2,3,8', '2,4,10'));
    expect(traces.map(({ specimen, samples }) => [specimen, samples.length])).toEqual([
      [1, 2],
      [2, 3],
    ]);
  });
});

describe('every fault is told, with its place', () => {
  const codes = (text: string) => readTraceFile(text).faults.map(({ code, row, column }) => `${code} ${row} ${column}`);

  test('in the header, all at once', () => {
    expect(codes(lines('Extension,Force (N),Load (N)', '0,0,0', '1,2,3'))).toEqual([
      'unit_missing 1 Extension',
      'column_twice 1 force',
      'column_missing 1 time',
    ]);
    expect(codes(lines('Extension (mm),Way (mm)', '0,0', '1,2'))).toEqual(['column_missing 1 force', 'column_twice 1 extension']);
  });

  test('in the rows, all at once', () => {
    const text = lines('Extension (mm),Force (N)', '0,0', '1,over range', ',3', '2,4');
    expect(codes(text)).toEqual(['row_not_valid 3 Force', 'row_not_valid 4 Extension']);
    expect(readTraceFile(text).faults[0]).toMatchObject({ found: 'over range', expected: 'a number' });
    expect(readTraceFile(text).traces).toEqual([]);
  });

  test('of the file as a whole', () => {
    expect(codes('')).toEqual(['file_empty 0 ']);
    expect(codes(lines('Extension (mm),Force (N)'))).toEqual(['file_not_csv 0 ']);
    const deep = Array.from({ length: 21 }, (_, i) => `Setting ${i},x`);
    expect(codes(lines(...deep, 'Extension (mm),Force (N)', '0,0', '1,1', '2,2', '3,3', '4,4', '5,5'))).toEqual(['file_not_csv 0 ']);
    expect(codes(['Extension (mm),Force (N)', ...Array.from({ length: 500_001 }, (_, i) => `${i},1`)].join('\n'))).toEqual([
      'file_too_large 0 ',
    ]);
  });

  test('a decimal comma beside commas is not guessed', () => {
    expect(readTraceFile(lines('Extension (mm),Force (N)', '0,0,0,0', '1,5,2,5')).traces).toEqual([]);
  });
});

describe('figures of a trace', () => {
  const spring = (k: number, toMm: number): Sample[] => Array.from({ length: 201 }, (_, i) => [(i * toMm) / 200, (k * i * toMm) / 200]);

  test('a spring: work F²/2k, slope k, elongation x/L, modulus kL/A (analytic)', () => {
    const figures = traceFigures('extension', spring(4, 25), { gaugeLengthMm: 500, areaMm2: 0.02 });
    expect(figures).toEqual({
      peakForceN: '100.00',
      atPeak: '25.000',
      elongationPercent: '5.00',
      stiffnessNPerMm: '4.000',
      initialModulusMPa: '100000',
      workToBreakJ: '1.2500',
      slips: [],
    });
  });

  test('the rise of a half-sine: work F·(2/π)·x at its top (analytic)', () => {
    const samples = Array.from({ length: 2001 }, (_, i): Sample => [(30 * i) / 2000, 80 * Math.sin((Math.PI * i) / 4000)]);
    const { workToBreakJ } = traceFigures('extension', samples, { gaugeLengthMm: null, areaMm2: null });
    expect(Number(workToBreakJ)).toBeCloseTo((80 * 30 * 2) / Math.PI / 1000, 3);
  });

  test('what cannot be stated is null: over time, without a gauge length, without a cross-section', () => {
    expect(traceFigures('time', spring(4, 25), { gaugeLengthMm: 500, areaMm2: 0.02 })).toMatchObject({
      elongationPercent: null,
      stiffnessNPerMm: null,
      initialModulusMPa: null,
      workToBreakJ: null,
    });
    expect(traceFigures('extension', spring(4, 25), { gaugeLengthMm: null, areaMm2: 0.02 }).elongationPercent).toBeNull();
    expect(traceFigures('extension', spring(4, 25), { gaugeLengthMm: 500, areaMm2: null }).initialModulusMPa).toBeNull();
  });

  test('a slip is told where it was', () => {
    const samples: Sample[] = [
      [0, 0],
      [10, 50],
      [10.1, 40],
      [20, 90],
    ];
    expect(traceFigures('extension', samples, { gaugeLengthMm: null, areaMm2: null }).slips).toEqual([
      { at: '10.000', fromForceN: '50.00', toForceN: '40.00' },
    ]);
  });
});

test('a thinned trace keeps its ends, its peak and its slip, in at most 64 points', () => {
  const samples = Array.from({ length: 10_000 }, (_, i): Sample => [i / 100, i === 4000 ? 5 : i / 100]);
  const kept = thinOut(samples);
  expect(kept.length).toBeLessThanOrEqual(64);
  expect(kept[0]).toEqual([0, 0]);
  expect(kept.at(-1)).toEqual([99.99, 99.99]);
  expect(kept).toContainEqual([40, 5]);
  expect(kept.map(([at]) => at)).toEqual(kept.map(([at]) => at).toSorted((one, other) => one - other));
  expect(thinOut(samples.slice(0, 64))).toHaveLength(64);
});

test('the drawing says what it shows, names no colour, and lets no title through as markup', () => {
  const svg = tracePlot({
    title: '<b>S-1</b>',
    over: 'extension',
    points: [
      [0, 0],
      [10, 50],
    ],
    peakForceN: '50.00',
    atPeak: '10.000',
  });
  expect(svg).toContain('&lt;b>S-1');
  expect(svg).toContain('the highest force, 50.00 N, is at 10.000 mm');
  expect(svg).not.toMatch(/#[0-9a-f]{3,6}|rgb\(/);
});

test('what is no CSV is told with its line', () => {
  expect(readTraceFile(lines('Extension (mm),Force (N)', '0,0', '"1,2', '3,4')).faults).toMatchObject([
    { code: 'file_not_csv', message: expect.stringContaining('quotation mark') },
  ]);
  expect(readTraceFile(lines('Extension (mm),Force (N)', '0,0', `1,${'9'.repeat(100_001)}`)).faults).toMatchObject([
    { code: 'file_not_csv', found: 'a row of more than 100000 characters' },
  ]);
});

test('rows of many widths end the reading: each costs the parser dear', () => {
  const text = lines('Extension (mm),Force (N)', '0,0', ...Array.from({ length: 5000 }, () => '1'));
  expect(readTraceFile(text).faults).toMatchObject([
    { code: 'row_width', row: 1003, found: '1001 rows of another number of cells than the first' },
  ]);
});
