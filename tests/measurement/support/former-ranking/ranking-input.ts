import type { RankingRules } from '../../../../api/measurement/ranking/ranking-input.js';
import type { Evidence, SharedSource } from './evidence.js';

export type { RankedCategory } from '../../../../api/measurement/ranking/ranking-input.js';

export interface RankedEntry {
  readonly id: string;
  readonly isExcluded: boolean;
  /** category code → evidence; null or absent without an accepted result */
  readonly results: Readonly<Record<string, Evidence | null>>;
}

export interface RankingInput extends RankingRules {
  readonly sources: Readonly<Record<string, SharedSource>>;
  readonly entries: readonly RankedEntry[];
}
