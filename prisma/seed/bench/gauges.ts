import type { Draws } from '../model/draws.js';
import type { TrueLine } from '../model/true-line.js';
import type { DemoSpecimen } from './demo-content.js';

const SPECIMENS = 5;
const STATIONS = 3;
const PIECE_M = 2;

/** Widest and narrowest reading at each station of five specimens. */
export function stations(line: TrueLine, draws: Draws): DemoSpecimen[] {
  const gaugeReads = draws.normal(1, 0.004);
  return specimens((number) => ({
    number,
    readings: Array.from({ length: STATIONS }, (_, index) => {
      const meanMm = line.diameterMm * gaugeReads * draws.normal(1, 0.012);
      const half = Math.max(0.002, draws.normal(line.outOfRoundness, line.outOfRoundness * 0.15)) / 2;
      const at = (role: 'wideDiameter' | 'narrowDiameter', mm: number) => ({ role, station: index + 1, value: mm.toFixed(3), unit: 'mm' });
      return [at('wideDiameter', meanMm * (1 + half)), at('narrowDiameter', meanMm * (1 - half))];
    }).flat(),
  }));
}

/** Five pieces of two metres, weighed. */
export function weighings(line: TrueLine, draws: Draws): DemoSpecimen[] {
  return specimens((number) => {
    const lengthM = draws.normal(PIECE_M - 0.002, 0.0008);
    const massG = (line.linearDensityTex * lengthM * draws.normal(1, 0.008)) / 1000;
    return {
      number,
      readings: [
        { role: 'mass', value: massG.toFixed(4), unit: 'g' },
        { role: 'length', value: Math.min(1.999, lengthM).toFixed(3), unit: 'm' },
      ],
    };
  });
}

const specimens = (make: (number: number) => DemoSpecimen): DemoSpecimen[] =>
  Array.from({ length: SPECIMENS }, (_, index) => make(index + 1));
