import { scaleLinear } from 'd3-scale';
import type { Over, Sample } from '../../readings/traces/trace-figures.js';

const [WIDTH, HEIGHT] = [320, 200];
const PAD = { left: 44, right: 8, top: 10, bottom: 34 };

export interface PlottedTrace {
  readonly title: string;
  readonly over: Over;
  readonly points: readonly Sample[];
  readonly peakForceN: string;
  readonly atPeak: string;
}

/** A small drawing of a trace that follows the colour of the text around it; says in words what it shows. */
export function tracePlot({ title, over, points, peakForceN, atPeak }: PlottedTrace): string {
  const unit = over === 'extension' ? 'mm' : 's';
  const x = scaleLinear([0, Math.max(...points.map(([at]) => at))], [PAD.left, WIDTH - PAD.right]).nice(4);
  const y = scaleLinear([0, Math.max(...points.map(([, forceN]) => forceN))], [HEIGHT - PAD.bottom, PAD.top]).nice(4);
  const line = points.map(([at, forceN]) => `${x(at).toFixed(1)},${y(forceN).toFixed(1)}`).join(' ');
  const text = (left: number, top: number, anchor: string, words: string) =>
    `<text x="${left.toFixed(1)}" y="${top.toFixed(1)}" text-anchor="${anchor}">${words}</text>`;
  const axes = [
    ...x.ticks(4).map((tick) => text(x(tick), HEIGHT - PAD.bottom + 14, 'middle', String(tick))),
    ...y.ticks(4).map((tick) => text(PAD.left - 5, y(tick) + 4, 'end', String(tick))),
    text((PAD.left + WIDTH - PAD.right) / 2, HEIGHT - 4, 'middle', `${over} (${unit})`),
    `<text transform="translate(11 ${(HEIGHT - PAD.bottom) / 2}) rotate(-90)" text-anchor="middle">force (N)</text>`,
  ];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-labelledby="title desc" font-family="sans-serif" font-size="11" fill="currentColor">`,
    `<title id="title">${escaped(title)}</title>`,
    `<desc id="desc">Force over ${over}; the highest force, ${peakForceN} N, is at ${atPeak} ${unit}.</desc>`,
    `<path d="M${PAD.left} ${PAD.top}V${HEIGHT - PAD.bottom}H${WIDTH - PAD.right}" fill="none" stroke="currentColor"/>`,
    ...axes,
    `<polyline points="${line}" fill="none" stroke="currentColor" stroke-width="1.5"/>`,
    '</svg>\n',
  ].join('\n');
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
