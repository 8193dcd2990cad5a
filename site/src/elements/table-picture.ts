import { draw, FACE, inkOf, lengthOf, type Drawn } from './picture-frame.js';

const [ROW, GAP, SIZE, STRIP] = [26, 22, 14, 170];

interface Cell {
  /** Ends of the scale that the column is drawn on. */
  ends: [string, string] | null;
  text: string;
  isNumber: boolean;
  isHead: boolean;
  /** A drawn interval: its ends and its dot in percent. */
  strip: { low: number | null; high: number | null; value: number | null } | null;
}

/** A table of the page with every row that shows, in the units that show; what a phone folds away is in it. */
export function tablePicture(table: HTMLTableElement): Drawn {
  const rows = [...table.rows].filter(({ hidden }) => !hidden).map((row) => [...row.cells].map(cellOf));
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => widthOf(row[column]))));
  const starts = widths.map((_, column) => widths.slice(0, column).reduce((sum, width) => sum + width + GAP, 0));
  const width = widths.reduce((sum, one) => sum + one + GAP, -GAP);
  const rule = inkOf('--rule');
  const lines = rows.map((row, index) => {
    const y = (index + 1) * ROW;
    const cells = row.flatMap((cell, column) => drawCell(cell, starts[column] ?? 0, widths[column] ?? 0, y - 8));
    return draw('g', {}, ...cells, draw('line', { x1: 0, x2: width, y1: y, y2: y, stroke: rule }));
  });
  return { node: draw('g', { 'font-family': FACE, 'font-size': SIZE }, ...lines), width, height: rows.length * ROW };
}

const fontOf = ({ isHead }: Cell) => `${isHead ? 600 : 400} ${SIZE}px ${FACE}`;
const widthOf = (cell: Cell | undefined): number => (cell ? (cell.strip ? STRIP : lengthOf(cell.text, fontOf(cell))) : 0);

function cellOf(cell: HTMLTableCellElement): Cell {
  const isHead = cell.tagName === 'TH';
  const svg = cell.querySelector('svg');
  const percent = (one: Element | null | undefined, name: string) => (one ? Number.parseFloat(one.getAttribute(name) ?? '') : null);
  const bar = svg?.querySelector('.bar');
  const strip = svg && { low: percent(bar, 'x1'), high: percent(bar, 'x2'), value: percent(svg.querySelector('.dot'), 'cx') };
  const scale = [...cell.querySelectorAll('.scale')].find((one) => one.checkVisibility());
  const ends = [...(scale?.querySelectorAll(':scope > span:not(.only-heard)') ?? [])].map(({ textContent }) => textContent);
  return {
    ends: ends.length === 2 ? (ends as [string, string]) : null,
    text: textOf(cell),
    isNumber: cell.classList.contains('num'),
    isHead,
    strip,
  };
}

/** What can be read in a cell: neither what is said to a screen reader alone nor the other units. */
function textOf(cell: HTMLElement): string {
  const shown = (node: Node): string => {
    if (node.nodeType === Node.TEXT_NODE) return node.textContent ?? '';
    if (!(node instanceof HTMLElement)) return '';
    const isSpoken = node.matches('.only-heard, .pad, .stacked-only, button, .row-link, .rival');
    if (isSpoken || (node !== cell && getComputedStyle(node).display === 'none')) return '';
    const inside = [...node.childNodes].map(shown).join('');
    return node.matches('.label, .unit') ? ` ${inside}` : inside;
  };
  return shown(cell).trim().replaceAll(/\s+/g, ' ');
}

function drawCell(cell: Cell, x: number, width: number, y: number): SVGElement[] {
  const { text, isNumber, isHead, strip, ends } = cell;
  if (strip) return drawStrip(strip, x, y - 5);
  const write = (words: string, isAtEnd: boolean) =>
    draw(
      'text',
      { x: isAtEnd ? x + width : x, y, fill: inkOf('--ink'), 'font-weight': isHead ? 600 : 400, 'text-anchor': isAtEnd ? 'end' : 'start' },
      words,
    );
  return ends ? [write(ends[0], false), write(ends[1], true)] : [write(text, isNumber)];
}

function drawStrip({ low, high, value }: NonNullable<Cell['strip']>, x: number, y: number): SVGElement[] {
  const at = (percent: number) => x + (STRIP * percent) / 100;
  const line = (from: number, to: number, stroke: string, width: number) =>
    draw('line', { x1: at(from), x2: at(to), y1: y, y2: y, stroke, 'stroke-width': width });
  return [
    line(0, 100, inkOf('--rule'), 1),
    ...(low === null || high === null ? [] : [line(low, high, inkOf('--accent-soft'), 5)]),
    ...(value === null ? [] : [draw('circle', { cx: at(value), cy: y, r: 3.5, fill: inkOf('--accent') })]),
  ];
}
