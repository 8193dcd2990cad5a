import type { Category, Figure, VariantName } from '../../../api/contract/documents/release-documents.js';
import type { Draws } from './draws.js';

/** A quantity that the invented house ranks: where the values lie, how they spread, and how they are printed. */
export interface InventedCategory {
  category: Category;
  typical: number;
  spreadOfLines: number;
  /** Half width of the 95 % interval, relative to the typical value. */
  relativeUncertainty: number;
  places: number;
  perTradeUnit: number | null;
}

const ranked = (code: string, name: string, [quantity = '', quantityName = '']: readonly string[], conditions: string): Category => ({
  code,
  name,
  quantity,
  quantityName,
  unit: '%',
  tradeUnit: null,
  direction: 'more',
  weight: '1',
  method: quantity.split('/')[1] ?? '',
  methodVersion: 1,
  series: quantity.split('/')[2] ?? '',
  section: quantity.startsWith('apparentStress') ? { method: 'diameter', series: 'outline' } : null,
  conditions,
  comparability: 'same',
});

const DRY = 'dry, 20 ± 2 °C, straight from the spool';

export const inventedCategories: InventedCategory[] = [
  {
    category: {
      ...ranked(
        'breaking-stress',
        'Breaking stress',
        ['apparentStress/straight-pull/untreated/diameter/outline', 'Apparent breaking stress'],
        DRY,
      ),
      unit: 'MPa',
      tradeUnit: 'psi',
    },
    typical: 1180,
    spreadOfLines: 0.13,
    relativeUncertainty: 0.021,
    places: 0,
    perTradeUnit: 145.0377,
  },
  {
    category: ranked(
      'knot-retention',
      'Knot retention',
      ['retention/named-knot/knotted', 'Knot retention, double uni'],
      `double uni knot, wetted; ${DRY}`,
    ),
    typical: 62,
    spreadOfLines: 0.16,
    relativeUncertainty: 0.028,
    places: 1,
    perTradeUnit: null,
  },
  {
    category: ranked(
      'abrasion-retention',
      'Abrasion retention',
      ['retention/abrasion/abraded', 'Abrasion retention, paper drum'],
      `200 strokes, grade 400 paper; ${DRY}`,
    ),
    typical: 71,
    spreadOfLines: 0.14,
    relativeUncertainty: 0.034,
    places: 1,
    perTradeUnit: null,
  },
  {
    category: {
      ...ranked('roundness', 'Roundness', ['outOfRoundness/diameter/outline', 'Out-of-roundness'], 'ten stations, 50 g'),
      direction: 'less',
    },
    typical: 9,
    spreadOfLines: 0.3,
    relativeUncertainty: 0.08,
    places: 1,
    perTradeUnit: null,
  },
];

/** What a line is really like, relative to the typical value of each category. */
export type TrueStrength = Map<string, number>;

export function inventTruth(draws: Draws): TrueStrength {
  return new Map(inventedCategories.map(({ category, spreadOfLines }) => [category.code, Math.max(0.3, draws.normal(1, spreadOfLines))]));
}

/** The figure of one variant in one category: the truth of its line with the noise of a season. */
export function measureFigure(invented: InventedCategory, truth: TrueStrength, draws: Draws, hasIntervals: boolean): Figure {
  const { category, typical, relativeUncertainty, places, perTradeUnit } = invented;
  const half = typical * relativeUncertainty;
  const value = draws.normal(typical * (truth.get(category.code) ?? 1), half / 2.2);
  const at = (x: number) => x.toFixed(places);
  const interval = (scale: number, digits: number) => ({
    value: (value * scale).toFixed(digits),
    low: hasIntervals ? ((value - half) * scale).toFixed(digits) : null,
    high: hasIntervals ? ((value + half) * scale).toFixed(digits) : null,
  });
  const holds100 = category.unit === '%' && Number(at(value)) > 100;
  return {
    quantity: category.quantity,
    name: category.quantityName,
    unit: category.unit,
    ...interval(1, places),
    trade: perTradeUnit === null || category.tradeUnit === null ? null : { unit: category.tradeUnit, ...interval(perTradeUnit, 0) },
    specimens: 16,
    submissions: 2,
    testers: 2,
    rigs: 2,
    note: holds100 ? 'Above 100 %: reported as found; the interval holds 100 %.' : null,
  };
}

/** Values of a season: category code → variant slug → figure. */
export type SeasonFigures = Map<string, Map<string, Figure>>;

export function measureEdition(
  variants: VariantName[],
  truths: Map<string, TrueStrength>,
  draws: Draws,
  hasIntervals: boolean,
): SeasonFigures {
  const measured: SeasonFigures = new Map();
  for (const invented of inventedCategories) {
    const figures = variants.map((variant): [string, Figure] => [
      variant.slug,
      measureFigure(invented, truths.get(variant.slug) ?? new Map(), draws, hasIntervals),
    ]);
    measured.set(invented.category.code, new Map(figures));
  }
  return measured;
}
