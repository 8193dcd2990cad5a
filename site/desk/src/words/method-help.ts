/** What follows from a method at the bench: where its page says so, and why, in a sentence. Pure. */
import type { MethodVersion } from '../../../../api/contract/endpoints/methods.js';

/** Parts of a method's page. */
export type MethodPart = 'purpose' | 'readings' | 'steps' | 'specimens' | 'spread' | 'grip' | 'time' | 'air' | 'versions';

/** Of each check that holds a submission against its method. */
export const METHOD_OF_FINDING: Readonly<Record<string, { readonly part: MethodPart; readonly why: string }>> = {
  'ambient/out-of-range': { part: 'air', why: 'Warm or damp line gives way earlier: results of different rooms are compared.' },
  'specimens/fewer-explained': { part: 'specimens', why: 'A mean of few pulls says little; the reviewer decides whether these may stand.' },
  'specimens/grip-breaks': {
    part: 'grip',
    why: 'What breaks at the grip tells how strong the grip left the line, not how strong the line is.',
  },
  'method/not-active-on-bench-day': { part: 'versions', why: 'Each day has its version, so that everybody of that day pulls alike.' },
  'readings/missing-for-method': { part: 'readings', why: 'A figure is made of all of these readings, or not at all.' },
  'specimens/spread-too-wide': { part: 'spread', why: 'Pulls of one spool that differ so much rarely tell of the line alone.' },
  'specimens/time-not-read': { part: 'time', why: 'A fast pull breaks higher than a slow one, so the time belongs to the force.' },
  'specimens/time-to-break': { part: 'time', why: 'A fast pull breaks higher than a slow one: within the window they can be compared.' },
  'specimens/too-few-valid': { part: 'specimens', why: 'A mean of few pulls says little of the spool.' },
};

/** What a sheet that is not full yet lacks anyhow: told when somebody hands it in, not from the first row on. */
export const TOLD_AT_THE_END: ReadonlySet<string> = new Set(['specimens/too-few-valid', 'readings/missing-for-method']);

export const methodAt = (slug: string, number: number, part?: MethodPart): string =>
  `/desk/method/?slug=${encodeURIComponent(slug)}&version=${number}${part ? `#${part}` : ''}`;

export interface Asked {
  readonly part: MethodPart;
  readonly what: string;
  /** What the version asks, in numbers; empty where its words alone say it. */
  readonly limit: string;
  readonly why: string;
}

/** Each field and figure of a sheet, with what its method asks of it. */
export function askedOf({ limits, series }: Pick<MethodVersion, 'limits' | 'series'>): readonly Asked[] {
  const {
    minimumSpecimens,
    maximumCvPercent,
    gripBreakSharePercent,
    timeToBreakS,
    ambientTemperatureC: air,
    ambientHumidityPercent: damp,
  } = limits;
  const kind = series[0]?.kind;
  const asked: (Asked | null)[] = [
    {
      part: 'readings',
      what: 'What is read',
      limit: series.map(readOf).join('; '),
      why: 'A figure is made of all of these readings, or not at all.',
    },
    kind === 'breakingForce'
      ? { part: 'specimens', what: 'Valid', limit: `at least ${minimumSpecimens}`, why: 'A mean of few pulls says little of the spool.' }
      : null,
    timeToBreakS && {
      part: 'time',
      what: 'Time',
      limit: `${timeToBreakS.low} to ${timeToBreakS.high} s`,
      why: 'A fast pull breaks higher than a slow one: within the window they can be compared.',
    },
    kind === 'breakingForce'
      ? {
          part: 'spread',
          what: 'Spread',
          limit: `at most ${maximumCvPercent} %`,
          why: 'Pulls of one spool that differ more rarely tell of the line alone.',
        }
      : null,
    kind === 'breakingForce'
      ? {
          part: 'grip',
          what: 'Broke at the grip',
          limit: `at most ${gripBreakSharePercent} %`,
          why: 'What breaks at the grip tells how strong the grip left the line, not how strong the line is.',
        }
      : null,
    {
      part: 'air',
      what: 'Air',
      limit: `${air.low} to ${air.high} °C, ${damp.low} to ${damp.high} %`,
      why: 'Warm or damp line gives way earlier: results of different rooms are compared.',
    },
  ];
  return asked.filter((one) => one !== null);
}

function readOf(series: MethodVersion['series'][number]): string {
  if (series.kind === 'diameterAlongStations') return `widest and narrowest at ${series.stations} stations`;
  if (series.kind === 'linearDensity') return 'mass and length';
  return `force, ${series.treatment ? series.treatment.words : 'nothing tied in or rubbed'}`;
}
