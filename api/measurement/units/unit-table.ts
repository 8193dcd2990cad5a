/** What a unit measures. */
export type Dimension = 'force' | 'length' | 'mass' | 'linearDensity' | 'stress' | 'ratio' | 'time' | 'temperature';

export interface Unit {
  dimension: Dimension;
  /** exact multiplier to SI, as a decimal string */
  factor: string;
  /** exact divisor to SI where the factor has no finite decimal form; '1' elsewhere */
  divisor: string;
  /** added to the entered value before scaling; only °F has one other than '0' */
  offset: string;
}

const unit = (dimension: Dimension, factor: string, divisor = '1', offset = '0'): Unit => ({ dimension, factor, divisor, offset });

/**
 * Every symbol that a reading may carry, with its exact factor (NIST SP 811 appendix B, ISO 80000-3/-4, ISO 1144).
 * SI value = (entered + offset) · factor / divisor. Symbols such as lb or oz are left out on purpose: they mean a mass or a force, and nothing is guessed.
 */
export const UNITS = {
  N: unit('force', '1'),
  kN: unit('force', '1000'),
  lbf: unit('force', '4.4482216152605'),
  kgf: unit('force', '9.80665'),
  gf: unit('force', '0.00980665'),
  ozf: unit('force', '4.4482216152605', '16'),
  mm: unit('length', '0.001'),
  µm: unit('length', '0.000001'),
  in: unit('length', '0.0254'),
  m: unit('length', '1'),
  yd: unit('length', '0.9144'),
  g: unit('mass', '0.001'),
  mg: unit('mass', '0.000001'),
  gr: unit('mass', '0.00006479891'),
  tex: unit('linearDensity', '0.000001'),
  dtex: unit('linearDensity', '0.0000001'),
  den: unit('linearDensity', '0.000001', '9'),
  MPa: unit('stress', '1000000'),
  GPa: unit('stress', '1000000000'),
  psi: unit('stress', '4.4482216152605', '0.00064516'),
  ksi: unit('stress', '4448.2216152605', '0.00064516'),
  '%': unit('ratio', '0.01'),
  s: unit('time', '1'),
  '°C': unit('temperature', '1'),
  '°F': unit('temperature', '5', '9', '-32'),
} as const satisfies Record<string, Unit>;

export type UnitSymbol = keyof typeof UNITS;

/** The SI unit in which each dimension is kept; temperatures are kept in degrees Celsius. */
export const SI_UNITS = {
  force: 'N',
  length: 'm',
  mass: 'kg',
  linearDensity: 'kg/m',
  stress: 'Pa',
  ratio: '1',
  time: 's',
  temperature: 'degC',
} as const satisfies Record<Dimension, string>;

export type SiUnit = (typeof SI_UNITS)[Dimension];
