import { withinSentence } from '../words/locale.js';
import { say } from '../words/say.js';
import type { ComparedFigure, ComparedTables, ComparedVariant } from '../weigh/compared.js';
import { aheadOverall, besideIn } from '../weigh/one-beside-another.js';
import { chanceWords } from '../words/chance-words.js';
import { domTable, inSystems, linkTo, type Cell } from './dom-table.js';

/** One that was chosen, and the name of its choice: short enough to stand at each figure where a table is narrow. */
export type Chosen = ComparedVariant & { readonly choice: string };

/** Two of those chosen, category by category and overall last: the difference, its interval, and the chance. */
export function besideTable(tables: ComparedTables, one: Chosen, other: Chosen): HTMLTableElement {
  const rows = tables.categories.map(({ name, unit, tradeUnit, href, direction }, at) => {
    const beside = besideIn(tables, at, one, other);
    const within = (unit: string, text: string | undefined) => (text === undefined ? say`no result` : `${text} ${unit}`);
    const both = (part: 'value' | 'interval'): Cell =>
      inSystems([
        { system: 'si', text: within(unit, beside?.difference?.[part]) },
        ...(tradeUnit && beside?.trade ? [{ system: 'trade' as const, text: within(tradeUnit, beside.trade[part]) }] : []),
      ]);
    return {
      head: linkTo(direction === 'more' ? name : say`${name} (less is better)`, href),
      cells: [both('value'), both('interval'), chanceWords(beside?.percent ?? undefined)],
    };
  });
  const places = [one, other].map(({ overall: { place } }) => String(place ?? say`none`)).join(say` and `);
  const overall = { head: say`Overall, places`, cells: [places, '', chanceWords(aheadOverall(tables, one, other) ?? undefined)] };
  const heads = [say`Category`, say`Difference`, say`95 % interval`, say`Chance that the first is ahead`];
  return domTable({
    caption: say`${one.name}, less ${other.name}`,
    heads,
    labels: heads.slice(1),
    rows: [...rows, overall],
    isNarrow: true,
  });
}

/** All that were chosen, side by side. */
export function figuresTable({ categories }: ComparedTables, variants: readonly Chosen[]): HTMLTableElement {
  const rows = [
    { head: say`Place overall`, cells: variants.map(({ overall }) => String(overall.place ?? say`not placed`)) },
    { head: say`Places the evidence allows`, cells: variants.map(({ overall }) => span(overall.placeInterval)) },
    { head: say`Group`, cells: variants.map(({ overall }) => String(overall.group ?? say`not stated`)) },
    ...categories.map(({ name, unit, tradeUnit, href }, at) => ({
      head: linkTo(name, href),
      cells: variants.map((variant): Cell => {
        const row = variant.categories[at];
        if (!row) return say`no result`;
        const place = row.place === null ? say`not placed` : say`place ${row.place}`;
        const words = (figure: ComparedFigure, unit: string) => `${figure.value} ${unit}${intervalOf(figure)}, ${place}`;
        return inSystems([
          { system: 'si', text: words(row, unit) },
          ...(row.trade && tradeUnit ? [{ system: 'trade' as const, text: words(row.trade, tradeUnit) }] : []),
        ]);
      }),
    })),
  ];
  const heads = [say`Figure`, ...variants.map(({ name, href }) => linkTo(name, href))];
  return domTable({
    caption: say`Places and values, with 95 % intervals`,
    heads,
    labels: variants.map(({ choice }) => choice),
    rows,
    isNarrow: variants.length === 2,
  });
}

const intervalOf = ({ low, high }: ComparedFigure): string => (low === null || high === null ? '' : say` (${low} to ${high})`);

const span = (interval: ComparedVariant['overall']['placeInterval']): string =>
  interval === null ? say`not stated` : interval.low === interval.high ? String(interval.low) : say`${interval.low} to ${interval.high}`;

/** What editors and makers say beside the figures of those chosen. */
export function wordsBeside({ remarks }: ComparedTables, variants: readonly Chosen[]): HTMLElement[] {
  return remarks.flatMap(({ words, signedBy, on, variants: touched }) => {
    const named = variants.filter(({ slug }) => touched.includes(slug)).map(({ choice }) => withinSentence(choice));
    if (named.length === 0) return [];
    const made = document.createElement('p');
    made.className = 'remark';
    made.textContent = say`† Of the ${named.join(say` and the `)}: ${words} (${signedBy}, ${on})`;
    return [made];
  });
}
