import { chanceWords } from '../words/chance-words.js';

interface Compared {
  readonly slug: string;
  readonly name: string;
  readonly href: string | null;
  readonly overall: { place: number | null; placeInterval: { low: number; high: number } | null; group: number | null; score: string };
  readonly categories: readonly ({ place: number | null; value: string; low: string | null; high: string | null } | undefined)[];
}

/** What is compared: a division, or an edition with one. */
interface Tables {
  readonly name: string;
  readonly categories: readonly { name: string; unit: string; href: string }[];
  readonly variants: readonly Compared[];
  readonly pairs: { readonly variants: readonly string[]; readonly aheadPercent: readonly (readonly number[])[] };
}

/** One that was chosen, and the name of its choice: short enough to stand at each figure where a table is narrow. */
type Chosen = Compared & { readonly choice: string };

type Cell = string | Node;

/** Puts the chosen variants side by side; the choice lives in the address, so that it can be sent and kept. */
class CompareVariants extends HTMLElement {
  private loaded: Promise<Tables[]> | undefined;

  connectedCallback(): void {
    const slugs = new URLSearchParams(location.search).getAll('variant');
    this.selects.forEach((select, index) => {
      if (slugs[index] !== undefined) select.value = slugs[index];
    });
    this.addEventListener('change', () => {
      const chosen = new URLSearchParams([...this.chosen.keys()].map((slug) => ['variant', slug]));
      history.replaceState(null, '', chosen.size === 0 ? location.pathname : `?${chosen.toString()}`);
      void this.show();
    });
    void this.show();
  }

  private get selects(): HTMLSelectElement[] {
    return [...this.querySelectorAll('select')];
  }

  /** Slug → name of the choice, of the first where two are the same. */
  private get chosen(): Map<string, string> {
    const chosen = new Map<string, string>();
    for (const { value, name } of this.selects) if (value !== '' && !chosen.has(value)) chosen.set(value, name);
    return chosen;
  }

  private async show(): Promise<void> {
    const [status, place] = [this.querySelector('[role=status]'), this.querySelector('.compared')];
    const chosen = this.chosen;
    if (!status || !place) return;
    if (chosen.size < 2) {
      status.textContent = 'Choose at least two different variants.';
      place.replaceChildren();
      return;
    }
    this.loaded ??= fetch('/compare.json').then((answer) => answer.json() as Promise<Tables[]>);
    const all = await this.loaded;
    const named = [...chosen].flatMap(([slug, choice]) =>
      all.flatMap((tables) => tables.variants.filter((one) => one.slug === slug).map((one) => ({ tables, variant: { ...one, choice } }))),
    );
    const [tables, ...others] = new Set(named.map((one) => one.tables));
    if (!tables || others.length > 0) {
      const names = [tables, ...others].map((one) => one?.name).join(' and ');
      status.textContent = `Lines of different divisions are not compared: ${names}. Choose variants of one.`;
      place.replaceChildren();
      return;
    }
    const variants = named.map(({ variant }) => variant);
    status.textContent = `${variants.length} variants compared.`;
    place.replaceChildren(figures(tables, variants), chances(tables, variants));
  }
}

function figures({ categories }: Tables, variants: readonly Chosen[]): HTMLTableElement {
  const rows: [Cell, ...Cell[]][] = [
    ['Place overall', ...variants.map(({ overall }) => String(overall.place ?? 'not placed'))],
    ['Places the evidence allows', ...variants.map(({ overall }) => span(overall.placeInterval))],
    ['Group', ...variants.map(({ overall }) => String(overall.group ?? 'not stated'))],
    ...categories.map(({ name, unit, href }, index): [Cell, ...Cell[]] => [
      linkTo(`${name}, ${unit}`, href),
      ...variants.map(({ categories: own }) => {
        const row = own[index];
        if (!row) return 'no result';
        const interval = row.low === null || row.high === null ? '' : ` (${row.low} to ${row.high})`;
        return `${row.value}${interval}, ${row.place === null ? 'not placed' : `place ${row.place}`}`;
      }),
    ]),
  ];
  return table('Places and values, with 95 % intervals', variants, rows);
}

const span = (interval: Compared['overall']['placeInterval']): string =>
  interval === null ? 'not stated' : interval.low === interval.high ? String(interval.low) : `${interval.low} to ${interval.high}`;

function chances({ pairs }: Tables, variants: readonly Chosen[]): HTMLElement {
  const at = ({ slug }: Compared) => pairs.variants.indexOf(slug);
  const placed = variants.filter((variant) => at(variant) >= 0);
  if (placed.length < 2) {
    const words = document.createElement('p');
    words.textContent = 'Chances are stated for placed variants only.';
    return words;
  }
  return table(
    `Chance that the variant of the row is ahead of that of the column, overall${placed.length < variants.length ? '; only placed variants have one' : ''}`,
    placed,
    placed.map((row): [Cell, ...Cell[]] => [
      row.name,
      ...placed.map((column) => (row === column ? 'itself' : chanceWords(pairs.aheadPercent[at(row)]?.[at(column)]))),
    ]),
  );
}

const nameOf = ({ name, href }: Compared): Cell => (href === null ? name : linkTo(name, href));

function linkTo(words: string, href: string): HTMLAnchorElement {
  const link = document.createElement('a');
  link.href = href;
  link.textContent = words;
  return link;
}

/** A table as all of this site: at 320 px its rows are stacked and still read as a table. */
function table(caption: string, variants: readonly Chosen[], rows: readonly (readonly [Cell, ...Cell[]])[]): HTMLTableElement {
  const made = document.createElement('table');
  made.className = 'sheet';
  made.setAttribute('role', 'table');
  made.createCaption().textContent = caption;
  const heading = made.createTHead();
  heading.setAttribute('role', 'rowgroup');
  heading.append(rowOf(['', ...variants.map(nameOf)].map((cell) => cellOf('th', 'columnheader', cell, 'col'))));
  const body = made.createTBody();
  body.setAttribute('role', 'rowgroup');
  for (const [first, ...cells] of rows) {
    const named = cells.map((cell, index) => {
      const made = cellOf('td', 'cell', cell);
      made.dataset['label'] = variants[index]?.choice ?? '';
      return made;
    });
    body.append(rowOf([cellOf('th', 'rowheader', first, 'row'), ...named]));
  }
  return made;
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
  if (content === '') cell.append(hidden('Figure'));
  else cell.append(typeof content === 'string' ? content : content.cloneNode(true));
  return cell;
}

/** An empty head would be no name for its column. */
function hidden(words: string): HTMLSpanElement {
  const made = document.createElement('span');
  made.className = 'small soft';
  made.textContent = words;
  return made;
}

customElements.define('compare-variants', CompareVariants);
