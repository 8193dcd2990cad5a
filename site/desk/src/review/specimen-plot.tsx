import { scaleLinear } from 'd3-scale';
import type { MethodVersion } from '../../../../api/contract/endpoints/methods.js';
import type { SubmissionResponse } from '../../../../api/contract/endpoints/submissions.js';
import { placeNumbers } from './place-numbers.js';

type Specimen = SubmissionResponse['specimens'][number];
interface Point {
  readonly specimen: Specimen;
  readonly force: number;
  readonly time: number | null;
}

const HEIGHT = 230;
const PAD = { left: 46, right: 14, top: 14, bottom: 40 };
const RADIUS = 6;

const siOf = ({ readings }: Specimen, role: string): number | null => {
  const reading = readings.find((one) => one.role === role);
  return reading ? Number(reading.value) : null;
};

/** Every specimen: its force, and its time against the method's window; hollow where it does not count, square where it was treated. */
export function SpecimenPlot({ specimens, limits }: { specimens: readonly Specimen[]; limits: MethodVersion['limits'] }) {
  const points = specimens.flatMap((specimen): Point[] => {
    const force = siOf(specimen, 'breakingForce');
    return force === null ? [] : [{ specimen, force, time: siOf(specimen, 'timeToBreak') }];
  });
  if (points.length === 0) return null;
  const width = Math.min(document.documentElement.clientWidth - 32, 720);
  const times = points.flatMap(({ time }) => time ?? []);
  const limit = times.length > 0 ? limits.timeToBreakS : null;
  const forces = points.map(({ force }) => force);
  const x = scaleLinear([Math.min(...forces), Math.max(...forces)], [PAD.left, width - PAD.right]).nice(5);
  const y = scaleLinear([Math.min(...times, limit?.low ?? 0), Math.max(...times, limit?.high ?? 1)], [HEIGHT - PAD.bottom, PAD.top]).nice(
    4,
  );
  const marks = points.map(({ specimen, force, time }) => ({
    specimen,
    number: specimen.number,
    x: x(force),
    y: time === null ? (PAD.top + HEIGHT - PAD.bottom) / 2 : y(time),
  }));
  const numbers = placeNumbers(marks, RADIUS);
  return (
    <figure class="specimens">
      <svg
        class="plot"
        width={width}
        height={HEIGHT}
        role="img"
        aria-label={`Force and time of ${points.length} specimens; the table below says the same`}
      >
        {x.ticks(5).map((tick) => (
          <g key={tick}>
            <line class="grid" x1={x(tick)} x2={x(tick)} y1={PAD.top} y2={HEIGHT - PAD.bottom} />
            <text x={x(tick)} y={HEIGHT - PAD.bottom + 16} text-anchor="middle">
              {tick}
            </text>
          </g>
        ))}
        {times.length > 0 &&
          y.ticks(4).map((tick) => (
            <text key={tick} x={PAD.left - 8} y={y(tick) + 4} text-anchor="end">
              {tick}
            </text>
          ))}
        {limit !== null &&
          [limit.low, limit.high].map((end) => (
            <line key={end} class="limit" x1={PAD.left} x2={width - PAD.right} y1={y(end)} y2={y(end)} />
          ))}
        {marks.map((mark) => (
          <Mark key={mark.number} {...mark} />
        ))}
        {numbers.map(
          (at, i) =>
            at && (
              <text key={i} class="number" x={at.x} y={at.y} text-anchor="middle" dominant-baseline="central">
                {marks[i]?.number}
              </text>
            ),
        )}
      </svg>
      <figcaption class="soft small">
        Force [N] across{times.length > 0 && ', time to break [s] upwards'}
        {limit !== null && '; dashed: the method’s window'}. Hollow: does not count. Square: treated.
      </figcaption>
    </figure>
  );
}

function Mark({ specimen, x, y }: { specimen: Specimen; x: number; y: number }) {
  const kind = specimen.state === 'valid' ? 'specimen' : 'struck';
  return specimen.condition === 'treated' ? (
    <rect class={kind} x={x - RADIUS} y={y - RADIUS} width={2 * RADIUS} height={2 * RADIUS} />
  ) : (
    <circle class={kind} cx={x} cy={y} r={RADIUS} />
  );
}
