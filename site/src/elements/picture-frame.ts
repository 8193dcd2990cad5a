/** What a picture says of itself, so that it can stand alone: where it comes from, of which revision, and where the rest is. */
export interface Frame {
  title: string;
  name: string;
  source: string;
  address: string;
}

/** What is drawn, and its size in px. */
export interface Drawn {
  node: SVGElement;
  width: number;
  height: number;
}

const SVG = 'http://www.w3.org/2000/svg';
/** A picture loads no face: what it is measured with is what it is drawn with. */
export const FACE = 'system-ui, sans-serif';
const [MARGIN, HEAD, FOOT, NOTE] = [24, 78, 54, 18];

export function draw<Name extends keyof SVGElementTagNameMap>(
  name: Name,
  attributes: Record<string, string | number>,
  ...inside: (Node | string)[]
): SVGElementTagNameMap[Name] {
  const node = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) node.setAttribute(key, String(value));
  node.append(...inside);
  return node;
}

/** Ink of a kind, as the page has it in the reader's theme. */
export const inkOf = (name: '--ink' | '--ink-soft' | '--rule' | '--accent' | '--accent-soft' | '--paper'): string => {
  const probe = document.createElement('span');
  probe.style.color = `var(${name})`;
  document.body.append(probe);
  const { color } = getComputedStyle(probe);
  probe.remove();
  return color;
};

/** Length of a text [px]. */
export function lengthOf(text: string, font: string): number {
  const pen = document.createElement('canvas').getContext('2d');
  if (!pen) return 8 * text.length;
  pen.font = font;
  return pen.measureText(text).width;
}

/** Paper around what is drawn: title and name above; notes, a line each, house, edition, revision, date and address below. */
export function framed({ node, width, height }: Drawn, { title, name, source, address }: Frame, notes: readonly string[]): SVGSVGElement {
  const line = (text: string, y: number, size: number, ink: string, weight = 400) =>
    draw('text', { x: MARGIN, y, fill: ink, 'font-family': FACE, 'font-size': size, 'font-weight': weight }, text);
  const texts = [name, ...notes, source, address];
  const widest = Math.max(width, lengthOf(title, `600 21px ${FACE}`), ...texts.map((text) => lengthOf(text, `14px ${FACE}`)));
  const [full, high] = [Math.ceil(widest + 2 * MARGIN), Math.ceil(HEAD + height + NOTE * notes.length + FOOT)];
  const [ink, soft] = [inkOf('--ink'), inkOf('--ink-soft')];
  const place = draw('g', { transform: `translate(${MARGIN} ${HEAD})` }, node);
  return draw(
    'svg',
    { width: full, height: high, viewBox: `0 0 ${full} ${high}` },
    draw('rect', { width: full, height: high, fill: inkOf('--paper') }),
    line(title, 36, 21, ink, 600),
    line(name, 58, 14, soft),
    place,
    ...notes.map((note, index) => line(note, HEAD + height + NOTE * (index + 1), 13, ink)),
    line(source, high - 32, 13, soft),
    line(address, high - 14, 13, soft),
  );
}
