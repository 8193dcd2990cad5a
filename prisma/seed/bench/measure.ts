import { versionOn } from '../methods/demo-methods.js';
import { Draws } from '../model/draws.js';
import { trueLine } from '../model/true-line.js';
import type { DemoSpool } from '../season/spools.js';
import type { BenchTask } from './bench-task.js';
import type { DemoContent, DemoSpecimen } from './demo-content.js';
import { pulls } from './pulls.js';
import { stations, weighings } from './gauges.js';

/** Fahrenheit is what the thermometer of this tester shows. */
const READS_FAHRENHEIT = 2;

const ZONE = 'Europe/Lisbon';

/** Everything that one task brings: the true line of the spool's contents, seen through rig, tester and chance. */
export function measure(seed: number, task: BenchTask, spool: DemoSpool): DemoContent {
  const draws = new Draws(seed, 'bench', task.key, task.rig ?? 'gauge', task.day);
  const line = trueLine(seed, spool.contents);
  const temperatureC = draws.normal(20.6, 0.7);
  const isFahrenheit = task.tester === READS_FAHRENHEIT;
  return {
    edition: task.season,
    method: task.method,
    methodVersion: versionOn(task.method, task.benchDay),
    benchDay: task.benchDay,
    zone: ZONE,
    instruments: instrumentsOf(task),
    ambient: {
      temperature: isFahrenheit
        ? { value: (32 + 1.8 * temperatureC).toFixed(1), unit: '°F' }
        : { value: temperatureC.toFixed(1), unit: '°C' },
      humidityPercent: draws.normal(59, 3.5).toFixed(0),
    },
    seenLabel: false,
    specimens: specimensOf(task, spool, line, draws),
  };
}

function specimensOf(task: BenchTask, spool: DemoSpool, line: ReturnType<typeof trueLine>, draws: Draws): DemoSpecimen[] {
  if (task.method === 'diameter') return stations(line, draws);
  if (task.method === 'linear-density') return weighings(line, draws);
  return pulls(task, { ...line, breakingForceN: line.breakingForceN * spool.lotEffect }, draws);
}

function instrumentsOf({ method, rig, tester }: BenchTask): string[] {
  if (method === 'diameter') return [tester % 2 === 0 ? 'O1' : 'M1'];
  if (method === 'linear-density') return ['B1', 'L1'];
  const code = rig ?? 'R1';
  return method === 'abrasion' ? [code, 'A1'] : [code];
}
