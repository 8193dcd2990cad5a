import { say } from './say.js';
import type { PublishedSeries } from '../../../api/contract/documents/release-documents.js';

/** What a method yields, in words; how a treatment is made follows in those of the house. */
export function seriesWords(series: PublishedSeries): string {
  if (series.kind === 'linearDensity') return say`Mass and length of pieces.`;
  if (series.kind === 'diameterAlongStations')
    return say`Widest and narrowest diameter, at ${series.stations} ${series.stations === 1 ? say`station` : say`stations`} of each specimen or more.`;
  if (series.treatment === null) return say`Breaking force, untreated.`;
  const { kind, name } = series.treatment;
  return say`Breaking force, ${kind === 'knot' ? say`knotted` : say`abraded`} (${name}):`;
}
