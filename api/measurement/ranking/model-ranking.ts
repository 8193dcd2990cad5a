/** What `rankByModel` takes and gives. */
import type { ModelEvidence, ModelSeries } from './model-evidence.js';
import type { OrderSensitivity } from './sensitivity/order-sensitivity.js';
import type { RankingRules } from './ranking-input.js';
import type { TableCertainty } from './table-certainty.js';

export interface ModelEntry {
  readonly id: string;
  readonly isExcluded: boolean;
  /** category code → evidence; null or absent without an accepted result */
  readonly results: Readonly<Record<string, ModelEvidence | null>>;
}

export interface ModelRankingInput extends RankingRules {
  readonly series: ModelSeries;
  readonly entries: readonly ModelEntry[];
}

/** A table whose series has values only has no places, and says why. */
export type ModelTable =
  (TableCertainty & { readonly kind: 'placed' }) | { readonly kind: 'unplaced'; readonly reason: 'nothing-known-of-effects' };

export interface ModelRanking {
  readonly draws: number;
  readonly level: number;
  readonly categories: Readonly<Record<string, ModelTable>>;
  readonly overall: ModelTable;
  readonly sensitivity: OrderSensitivity;
}
