import { algorithmA } from '../../measurement/agreement/algorithm-a.js';
import { mandelHCritical, mandelKCritical } from '../../measurement/agreement/mandel-critical.js';
import { zScore } from '../../measurement/agreement/performance-scores.js';
import { roundRobin } from '../../measurement/agreement/round-robin.js';
import { screenRoundRobin } from '../../measurement/agreement/screen-round-robin.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { RoundRobinReport } from '../../contract/documents/round-robins-document.js';
import type { RoundRobinEvidence } from '../evidence/round-robin-evidence.js';

/** Level of h and k, as in E691. */
const ALPHA = 0.005;
const inN = (value: number): string => roundHalfEven(value, 3);
/** Statistics of consistency and z scores are printed to two places, as in E691. */
const statistic = (value: number): string => roundHalfEven(value, 2);

type Level = RoundRobinReport['levels'][number];
type Cell = RoundRobinEvidence['cells'][number];

/** What a round robin tells, spool by spool (ISO 5725-2, ASTM E691); testers that stand apart are shown, nobody is left out. Pure. */
export const reportOf = ({
  slug,
  name,
  words,
  method,
  specimens,
  closedOn,
  testers,
  levels,
  cells,
}: RoundRobinEvidence): RoundRobinReport => ({
  slug,
  name,
  words,
  method,
  specimens,
  testers,
  closedOn,
  levels: levels.map((level) =>
    levelReport(
      level,
      cells.filter((cell) => cell.level === level).toSorted((one, other) => one.tester - other.tester),
    ),
  ),
});

const UNKNOWN = {
  meanN: null,
  repeatabilitySdN: null,
  betweenSdN: null,
  reproducibilitySdN: null,
  hCritical: null,
  kCritical: null,
  cochran: null,
};
const UNKNOWN_CELL = { meanN: null, sdN: null, h: null, k: null, z: null, isFar: false, isWide: false };

function levelReport(level: string, cells: readonly Cell[]): Level {
  const values = cells.map(({ readings }) => readings.map(({ valueN }) => Number(valueN)));
  if (values.length < 2) return { ...UNKNOWN, level, cells: cells.map((cell) => ({ ...UNKNOWN_CELL, ...toCell(cell) })) };
  const robin = roundRobin(values);
  const { farMeans, wideSpreads, cochran } = screenRoundRobin(robin, ALPHA);
  const robust = algorithmA(robin.cellMeans);
  const z = (value: number) => (robust.sd > 0 ? statistic(zScore(value, robust.mean, robust.sd)) : null);
  return {
    level,
    meanN: inN(robin.mean),
    repeatabilitySdN: inN(robin.repeatabilitySd),
    betweenSdN: inN(robin.betweenSd),
    reproducibilitySdN: inN(robin.reproducibilitySd),
    hCritical: cells.length < 3 ? null : statistic(mandelHCritical(cells.length, ALPHA)),
    kCritical: statistic(mandelKCritical(cells.length, robin.cellSizes[0] ?? 2, ALPHA)),
    cochran: { statistic: statistic(cochran.statistic), isOutlier: cochran.isOutlier },
    cells: cells.map((cell, i) => ({
      ...toCell(cell),
      meanN: inN(robin.cellMeans[i] ?? 0),
      sdN: inN(robin.cellSds[i] ?? 0),
      h: orNull(robin.h[i]),
      k: orNull(robin.k[i]),
      z: z(robin.cellMeans[i] ?? 0),
      isFar: farMeans?.includes(i) ?? false,
      isWide: wideSpreads.includes(i),
    })),
  };
}

const orNull = (value: number | null | undefined): string | null => (value === null || value === undefined ? null : statistic(value));

const toCell = ({ tester, instrument, readings }: Cell) => ({
  tester,
  instrument,
  readings: readings.map(({ text, unit, valueN }) => ({ text, unit, valueN })),
});
