import { draw, FACE, type Drawn } from './picture-frame.js';

/** What a style sheet says of a drawing; in a picture the drawing has to say it itself. */
const SAID = [
  'fill',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'opacity',
  'font-size',
  'font-weight',
  'vector-effect',
  'paint-order',
];
const SHOWN_IN_FULL = 760;

/** A chart of the page, as it is drawn there. */
export function chartPicture(figure: HTMLElement): Drawn {
  const chart = figure.querySelector('svg');
  if (!chart) throw new Error('There is no drawing in this figure.');
  const { width, height } = chart.getBoundingClientRect();
  // Folded away it has no size on the page.
  const size = width > 0 ? { width, height } : { width: SHOWN_IN_FULL, height: SHOWN_IN_FULL / 2 };
  const copy = chart.cloneNode(true) as SVGSVGElement;
  const copies = copy.querySelectorAll<SVGElement>('*');
  chart.querySelectorAll<SVGElement>('*').forEach((one, index) => {
    const style = getComputedStyle(one);
    for (const name of SAID) copies[index]?.setAttribute(name, style.getPropertyValue(name));
    if (style.display === 'none') copies[index]?.setAttribute('display', 'none');
  });
  for (const name of ['class', 'role', 'aria-labelledby']) copy.removeAttribute(name);
  for (const link of copy.querySelectorAll('a')) link.removeAttribute('href');
  return { node: draw('g', { 'font-family': FACE }, withSize(copy, size)), ...size };
}

function withSize(svg: SVGSVGElement, { width, height }: { width: number; height: number }): SVGSVGElement {
  svg.setAttribute('width', String(width));
  svg.setAttribute('height', String(height));
  return svg;
}
