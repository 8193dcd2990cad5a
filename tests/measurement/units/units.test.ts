import { convert } from '../../../api/measurement/units/convert.js';
import { ExactDecimal } from '../../../api/measurement/units/exact-decimal.js';
import { parseQuantity } from '../../../api/measurement/units/parse-quantity.js';
import { parseQuantityAs } from '../../../api/measurement/units/parse-quantity-as.js';
import { roundHalfEven } from '../../../api/measurement/units/round-half-even.js';
import { roundInterval } from '../../../api/measurement/units/round-to-uncertainty.js';
import { roundToUncertainty } from '../support/formulas/round-to-uncertainty.js';
import { UNITS } from '../../../api/measurement/units/unit-table.js';
import type { UnitSymbol } from '../../../api/measurement/units/unit-table.js';
import type { MeasurementError } from '../../../api/measurement/errors.js';
import { equivalentSolidDiameterMm } from '../../../api/measurement/figures/cross-section.js';
import { solidStressMPa } from '../support/formulas/stress-and-tenacity.js';
import { errorCode } from '../support/error-code.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';

const cases = referenceCases('units');
const from = (text: string | number, unit: string, to: UnitSymbol): number => Number(convert(parseQuantity(String(text), unit).si, to));
const si = (text: string | number, unit: string): number => Number(parseQuantity(String(text), unit).si);

test(named(cases['U01-factors']!), () => {
  expectReference(cases['U01-factors']!, {
    lbf_to_N: si(1, 'lbf'),
    kgf_to_N: si(1, 'kgf'),
    ozf_to_N: si(1, 'ozf'),
    gf_to_N: si(1, 'gf'),
    psi_to_Pa: si(1, 'psi'),
    in_to_mm: from(1, 'in', 'mm'),
    ft_to_m: si(12, 'in'),
    yard_to_m: si(1, 'yd'),
    // A pound is 7000 grains, an ounce a sixteenth of it.
    lb_to_kg: si(7000, 'gr'),
    oz_to_g: from('437.5', 'gr', 'g'),
    grain_to_mg: from(1, 'gr', 'mg'),
    denier_to_tex: from(1, 'den', 'tex'),
    dtex_to_tex: from(1, 'dtex', 'tex'),
    tex_to_kg_per_m: si(1, 'tex'),
    mil_to_um: from('0.001', 'in', 'µm'),
    lbf_to_kgf: from(1, 'lbf', 'kgf'),
  });
});

test(named(cases['U02-conversions']!), () => {
  const symbols: Record<string, string> = { yard: 'yd', inch: 'in', denier: 'den', grain: 'gr' };
  const found = cases['U02-conversions']!.inputs.map(({ value, from: source, to }: { value: number; from: string; to: string }) => {
    const symbol = symbols[source] ?? source;
    return to === 'cN' ? 100 * si(value, symbol) : from(value, symbol, to as UnitSymbol);
  });
  expectReference(cases['U02-conversions']!, found);
});

test(named(cases['U03-tenacity']!), () => {
  const { rows } = cases['U03-tenacity']!.inputs;
  expectReference(cases['U03-tenacity']!, {
    gf_per_den_in_cN_per_tex: (100 * si(1, 'gf')) / from(1, 'den', 'tex'),
    MPa: rows.map((row: any) => solidStressMPa(row.tenacity_cN_per_tex, row.density_g_cm3)),
  });
});

test(named(cases['U04-equivalent-diameter']!), () => {
  const { rows } = cases['U04-equivalent-diameter']!.inputs;
  expectReference(cases['U04-equivalent-diameter']!, {
    diameter_mm: rows.map((row: any) => equivalentSolidDiameterMm(row.tex, row.density_g_cm3)),
  });
});

describe('reading a quantity', () => {
  test('keeps the entered form beside an exact SI value', () => {
    expect(parseQuantity(' 36.520 ', ' lbf ')).toEqual({
      text: '36.520',
      unit: 'lbf',
      si: '162.44905338931346',
      siUnit: 'N',
      dimension: 'force',
    });
    expect(parseQuantity('0.1', 'mm').si).toBe('0.0001');
    expect(parseQuantity('1.25e+2', 'gf').si).toBe('1.22583125');
  });

  test('keeps 40 digits where no finite decimal exists', () => {
    expect(parseQuantity('200', 'den').si).toBe('0.00002222222222222222222222222222222222222222');
  });

  test('temperatures have an offset (NIST SP 811: 98.6 °F is 37 °C)', () => {
    expect(parseQuantity('98.6', '°F')).toMatchObject({ si: '37', siUnit: 'degC', dimension: 'temperature' });
    expect(parseQuantity('-40', '°F').si).toBe('-40');
    expect(convert('37', '°F')).toBe('98.6');
  });

  test('every known unit gives back what was entered, digit for digit', () => {
    for (const unit of Object.keys(UNITS) as UnitSymbol[]) {
      for (const text of ['36.52', '0.001', '123456789.123456789', '7']) expect(convert(parseQuantity(text, unit).si, unit)).toBe(text);
    }
  });

  test('the two micro signs are one unit', () => {
    expect(parseQuantity('5', '\u03bcm').unit).toBe('\u00b5m');
    expect(parseQuantity('5', '\u00b5m').unit).toBe('\u00b5m');
  });

  test.each(['lb', 'oz', 'kg', 'lbs', 'LBF', 'mM', 'n', '', 'constructor', 'toString', '__proto__'])(
    'does not guess at the unit "%s"',
    (symbol) => {
      expect(errorCode(() => parseQuantity('1', symbol))).toBe('units/unknown-symbol');
      expect(errorCode(() => convert('1', symbol as UnitSymbol))).toBe('units/unknown-symbol');
    },
  );

  test('the refusal lists every known unit', () => {
    let message = '';
    try {
      parseQuantity('1', 'lb');
    } catch (error) {
      message = (error as MeasurementError).message;
    }
    for (const unit of Object.keys(UNITS)) expect(message).toContain(unit);
    expect(message).toContain('"lb"');
  });

  test.each(['', 'NaN', 'Infinity', '-Infinity', '1,5', '1 000', '1.2.3', '0x10', '1e999', '.5', '5.', '--1', '½', '１２'])(
    'refuses "%s" as a number',
    (text) => {
      expect(errorCode(() => parseQuantity(text, 'N'))).toBe('units/not-a-number');
    },
  );

  test('refuses more digits than the working precision holds exactly', () => {
    expect(parseQuantity('1'.repeat(30), 'N').si).toBe('1'.repeat(30));
    expect(errorCode(() => parseQuantity('1'.repeat(31), 'N'))).toBe('units/too-many-digits');
  });

  test('converting refuses NaN, infinities and words', () => {
    for (const value of [NaN, Infinity, 'x', '']) expect(errorCode(() => convert(value, 'N'))).toBe('units/not-a-number');
  });

  test('stays exact whatever the decimal library is told elsewhere', () => {
    expect(new ExactDecimal(1).div(3).precision()).toBe(60);
  });
});

describe('reading a quantity of a known dimension', () => {
  test('takes what fits', () => {
    expect(parseQuantityAs('0.18', 'mm', 'length')).toEqual(parseQuantity('0.18', 'mm'));
  });

  test('refuses another dimension, and says which units would fit', () => {
    const run = () => parseQuantityAs('20', 'lbf', 'length');
    expect(errorCode(run)).toBe('units/wrong-dimension');
    expect(run).toThrow(/mm, µm, in, m, yd/);
  });

  test.each(['0', '-1', '0.000', '-0'])('refuses %s: a quantity of this kind is above zero', (text) => {
    expect(errorCode(() => parseQuantityAs(text, 'N', 'force'))).toBe('units/not-positive');
  });
});

describe('rounding half-even (ISO 80000-1, rule A)', () => {
  test.each([
    ['2.345', 2, '2.34'],
    ['2.355', 2, '2.36'],
    ['2.3450000001', 2, '2.35'],
    ['-2.345', 2, '-2.34'],
    ['0.5', 0, '0'],
    ['1.5', 0, '2'],
    ['2.5', 0, '2'],
    [2.5, 0, '2'],
    // The nearest binary number lies below 1.005; its decimal form is what was meant.
    [1.005, 2, '1.00'],
    [1.015, 2, '1.02'],
    ['-0.001', 2, '0.00'],
    ['7', 3, '7.000'],
    [1e25, 1, '10000000000000000000000000.0'],
  ])('%s to %i places is %s', (value, places, rounded) => {
    expect(roundHalfEven(value, places)).toBe(rounded);
  });

  test('refuses what is no number and places that are no count', () => {
    for (const value of [NaN, Infinity, 'abc']) expect(errorCode(() => roundHalfEven(value, 2))).toBe('units/not-a-number');
    for (const places of [-1, 1.5, 41, NaN]) expect(errorCode(() => roundHalfEven('1', places))).toBe('units/bad-places');
  });
});

describe('rounding to the uncertainty (JCGM 100, 7.2.6)', () => {
  test.each([
    ['89.2371', '0.4449', '89.24', '0.44', 2],
    // Rounding U moves its first digit: 0.0996 is shown as 0.10, so the value has two places, not three.
    ['1.23456', '0.0996', '1.23', '0.10', 2],
    ['457750', '9123', '457800', '9100', 0],
    ['152.5', '15', '152', '15', 0],
    ['-0.0004', '0.12', '0.00', '0.12', 2],
    [0.25, 0.0031, '0.2500', '0.0031', 4],
  ])('%s with U = %s is shown as %s ± %s', (value, uncertainty, shown, shownUncertainty, places) => {
    expect(roundToUncertainty(value, uncertainty)).toEqual({ value: shown, expandedUncertainty: shownUncertainty, places });
  });

  test('refuses a missing or impossible uncertainty', () => {
    for (const uncertainty of [0, -1, '0']) expect(errorCode(() => roundToUncertainty(1, uncertainty))).toBe('units/bad-uncertainty');
    expect(errorCode(() => roundToUncertainty(1, NaN))).toBe('units/not-a-number');
    expect(errorCode(() => roundToUncertainty(NaN, 1))).toBe('units/not-a-number');
  });
});

describe('rounding a value with its interval', () => {
  test.each([
    // Two digits of U = 10 897 psi leave whole thousands, for the value and for both ends.
    [419_959, 409_062, 430_856, 0, { value: '420000', low: '409000', high: '431000' }],
    [2896.04, 2820.4, 2971.7, 1, { value: '2896', low: '2820', high: '2972' }],
    // The scheme's places are the finest that are shown, however small U is.
    [89.2371, 89.2351, 89.2391, 1, { value: '89.2', low: '89.2', high: '89.2' }],
    // U = 0.0996 rounds to 0.10: one digit fewer.
    [1.23456, 1.13496, 1.33416, 4, { value: '1.23', low: '1.13', high: '1.33' }],
    [99.5, 98.2, 100.8, 3, { value: '99.5', low: '98.2', high: '100.8' }],
    [5, 5, 5, 2, { value: '5.00', low: '5.00', high: '5.00' }],
  ])('%d (%d to %d) at no more than %d places', (value, low, high, places, shown) => {
    expect(roundInterval(value, { low, high }, places)).toEqual(shown);
  });

  test('without an interval the stated places hold; places that are no count are refused', () => {
    expect(roundInterval('23.775', null, 2)).toEqual({ value: '23.78', low: null, high: null });
    for (const places of [-1, 0.5, NaN]) expect(errorCode(() => roundInterval(1, null, places))).toBe('units/bad-places');
    expect(errorCode(() => roundInterval(NaN, null, 1))).toBe('units/not-a-number');
  });
});
