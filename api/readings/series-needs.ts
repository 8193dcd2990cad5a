/** What follows from the kind of a series. Pure. */
import type { MethodSeries } from '../contract/method-series.js';
import type { ReadingRole } from '../contract/submission-content.js';

/** Readings that each counted specimen of a series carries. */
export interface SeriesNeed {
  readonly condition: 'untreated' | 'treated';
  /** Roles of the readings, all of them at each station. */
  readonly roles: readonly ReadingRole[];
  /** Least number of stations. */
  readonly stations: number;
}

const ROLES: Readonly<Record<MethodSeries['kind'], readonly ReadingRole[]>> = {
  breakingForce: ['breakingForce'],
  diameterAlongStations: ['wideDiameter', 'narrowDiameter'],
  linearDensity: ['mass', 'length'],
};

export const needOf = (series: MethodSeries): SeriesNeed => ({
  condition: series.kind === 'breakingForce' && series.treatment ? 'treated' : 'untreated',
  roles: ROLES[series.kind],
  stations: series.kind === 'diameterAlongStations' ? series.stations : 1,
});

export const isTreated = (series: MethodSeries): boolean => needOf(series).condition === 'treated';

/** The untreated pulls of a method, which its treated ones are compared with; undefined where it has none. */
export const untreatedOf = (list: readonly MethodSeries[]): MethodSeries | undefined =>
  list.find((series) => series.kind === 'breakingForce' && !isTreated(series));
