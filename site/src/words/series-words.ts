import type { PublishedSeries } from '../../../api/contract/documents/release-documents.js';

/** What a method yields, in words. */
export function seriesWords(series: PublishedSeries): string {
  if (series.kind === 'linearDensity') return 'Mass and length of pieces.';
  if (series.kind === 'diameterAlongStations')
    return `Widest and narrowest diameter, at ${series.stations} ${series.stations === 1 ? 'station' : 'stations'} of each specimen or more.`;
  if (series.treatment === null) return 'Breaking force, untreated.';
  const { kind, name, words } = series.treatment;
  return `Breaking force, ${kind === 'knot' ? 'knotted' : 'abraded'} (${name}): ${words}.`;
}
