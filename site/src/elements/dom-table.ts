import type { System } from '../words/in-units.js';
import { figures } from '../words/figures.js';

export type Cell = string | Node;

interface Row {
  readonly head: Cell;
  readonly cells: readonly Cell[];
}

interface Table {
  readonly caption: string;
  readonly heads: readonly Cell[];
  readonly labels: readonly string[];
  readonly rows: readonly Row[];
  /** Whether it fits a phone as it is. */
  readonly isNarrow: boolean;
}

/** A table as all of this site: where it does not fit its rows are stacked and still read as a table. */
export function domTable({ caption, heads, labels, rows, isNarrow }: Table): HTMLTableElement {
  const made = document.createElement('table');
  made.className = 'sheet';
  made.classList.toggle('narrow', isNarrow);
  made.setAttribute('role', 'table');
  made.createCaption().textContent = caption;
  const heading = made.createTHead();
  heading.setAttribute('role', 'rowgroup');
  heading.append(rowOf(heads.map((cell) => cellOf('th', 'columnheader', cell, 'col'))));
  const body = made.createTBody();
  body.setAttribute('role', 'rowgroup');
  for (const { head, cells } of rows) {
    const named = cells.map((cell, index) => {
      const made = cellOf('td', 'cell', cell);
      made.dataset['label'] = labels[index] ?? '';
      return made;
    });
    body.append(rowOf([cellOf('th', 'rowheader', head, 'row'), ...named]));
  }
  return made;
}

export function linkTo(words: string, href: string | null): Cell {
  if (href === null) return words;
  const link = document.createElement('a');
  link.href = href;
  link.textContent = words;
  return link;
}

/** Text in all unit systems, of which the switch shows one. */
export function inSystems(texts: readonly { readonly system: System; readonly text: string }[]): HTMLSpanElement {
  const all = document.createElement('span');
  all.classList.toggle('both', texts.length > 1);
  all.append(
    ...texts.map(({ system, text }) => {
      const part = document.createElement('span');
      part.className = system;
      part.textContent = figures(text);
      return part;
    }),
  );
  return all;
}

function rowOf(cells: readonly HTMLElement[]): HTMLTableRowElement {
  const row = document.createElement('tr');
  row.setAttribute('role', 'row');
  row.append(...cells);
  return row;
}

function cellOf(name: 'th' | 'td', role: string, content: Cell, scope?: string): HTMLTableCellElement {
  const cell = document.createElement(name);
  cell.setAttribute('role', role);
  if (scope !== undefined) cell.scope = scope;
  cell.append(typeof content === 'string' ? figures(content) : content.cloneNode(true));
  return cell;
}
