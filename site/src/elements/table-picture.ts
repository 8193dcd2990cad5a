import { say } from '../words/say.js';
import { draw, FACE, inkOf, lengthOf, type Drawn } from './picture-frame.js';
import { shownText } from './shown-text.js';

const [ROW, GAP, SIZE, STRIP, BAR] = [26, 22, 14, 170, 10];

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
  const shown = [...table.rows].filter(({ hidden }) => !hidden);
  const rows = shown.map((row) => [...row.cells].map(cellOf));
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => widthOf(row[column]))));
  const starts = widths.map((_, column) => widths.slice(0, column).reduce((sum, width) => sum + width + GAP, 0));
  const width = widths.reduce((sum, one) => sum + one + GAP, -GAP);
  const rule = inkOf('--rule');
  const lines = rows.map((row, index) => {
    const y = (index + 1) * ROW;
    const cells = row.flatMap((cell, column) => drawCell(cell, starts[column] ?? 0, widths[column] ?? 0, y - 8));
    const line = draw('line', { x1: 0, x2: width, y1: y, y2: y, stroke: rule });
    return draw('g', {}, ...cells, line, ...(shown[index]?.querySelector('.marks.first') ? [drawBar(y)] : []));
  });
  return { node: draw('g', { 'font-family': FACE, 'font-size': SIZE }, ...lines), width, height: rows.length * ROW };
}

/** What has to be known to read it: the sentences of its caption, and what its mark stands for. */
export function notesOn(table: HTMLTableElement): string[] {
  const told = table.caption ? shownText(table.caption).split(/(?<=\.) /) : [];
  return [...told, ...(table.tBodies[0]?.textContent.includes('†') ? [say`† words stand beside its figures`] : [])];
}

const drawBar = (foot: number) =>
  draw('line', { x1: -BAR, x2: -BAR, y1: foot - ROW, y2: foot, stroke: inkOf('--accent'), 'stroke-width': 3 });

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
    text: shownText(cell),
    isNumber: cell.classList.contains('num'),
    isHead,
    strip,
  };
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
