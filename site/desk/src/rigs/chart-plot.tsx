import { scaleLinear } from 'd3-scale';
import type { z } from 'zod';
import type { chartPointSchema } from '../../../../api/contract/documents/rigs-document.js';
import { dayOf } from '../words/day-of.js';

type Point = z.infer<typeof chartPointSchema>;

const SIZE = { usual: { width: 720, height: 190 }, small: { width: 340, height: 130 } };
const PAD = { left: 52, right: 14, top: 12, bottom: 24 };
const RADIUS = 5;
export const MOST_POINTS = 30;

interface Props {
  readonly points: readonly Point[];
  /** Bench day whose pull is drawn larger. */
  readonly marked?: string;
  /** One of many, side by side. */
  readonly isSmall?: boolean;
}

/** Means of control pulls between the limits that judged them; hollow where a pull was struck, full red where it signalled. */
export function ChartPlot({ points, marked, isSmall = false }: Props) {
  const shown = points.slice(-MOST_POINTS);
  const values = shown.flatMap(({ meanN, lowN, highN }) => [meanN, lowN, highN].flatMap((text) => (text === null ? [] : [Number(text)])));
  const { width: widest, height } = isSmall ? SIZE.small : SIZE.usual;
  const width = Math.min(document.documentElement.clientWidth - 32, widest);
  const x = scaleLinear([0, Math.max(shown.length - 1, 1)], [PAD.left, width - PAD.right]);
  const y = scaleLinear([Math.min(...values), Math.max(...values)], [height - PAD.bottom, PAD.top]).nice(4);
  const path = (pick: (point: Point) => string | null) =>
    shown
      .flatMap((point, i) => {
        const text = pick(point);
        return text === null ? [] : [`${x(i)},${y(Number(text))}`];
      })
      .join(' ');
  return (
    <figure class="specimens">
      <svg class="plot" width={width} height={height} role="img" aria-label={`${shown.length} control pulls; the list below says the same`}>
        {y.ticks(4).map((tick) => (
          <g key={tick}>
            <line class="grid" x1={PAD.left} x2={width - PAD.right} y1={y(tick)} y2={y(tick)} />
            <text x={PAD.left - 8} y={y(tick) + 4} text-anchor="end">
              {tick}
            </text>
          </g>
        ))}
        <polyline class="limit" points={path(({ lowN }) => lowN)} />
        <polyline class="limit" points={path(({ highN }) => highN)} />
        {shown.map((point, i) => (
          <g key={`${point.benchDay}-${i}`}>
            <circle class={classOf(point)} cx={x(i)} cy={y(Number(point.meanN))} r={point.benchDay === marked ? RADIUS + 3 : RADIUS} />
          </g>
        ))}
      </svg>
      <figcaption class="soft small">
        {!isSmall && 'Means, N, '}
        {dayOf(shown[0]?.benchDay ?? '')} to {dayOf(shown.at(-1)?.benchDay ?? '')}
        {marked !== undefined && '. Large: the day of these readings.'}
      </figcaption>
    </figure>
  );
}

const classOf = ({ strike, signals }: Point): string => (strike ? 'struck' : signals.length > 0 ? 'specimen signal' : 'specimen');
