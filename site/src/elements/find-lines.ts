import { say } from '../words/say.js';
import type { FindIndex, FindTable } from '../release/find-index.js';
import { inSystems, linkTo } from './dom-table.js';
import { figureOf, fitsOf, leadOf, reasonsOf, type Fit, type Wish } from '../words/find-words.js';
import { figures } from '../words/figures.js';

type Field = HTMLSelectElement | HTMLInputElement;

/** Whether a field holds something else than the page came with. */
function isChosen(field: Field): boolean {
  if (field instanceof HTMLSelectElement) return field.selectedIndex > 0;
  return field.type === 'checkbox' ? field.checked : field.value !== '';
}

/** More do not help who has to choose; the published order is one press away. */
const MOST_SHOWN = 8;

/** Lists the lines that fit what is fished, in the published order of what matters; the wish lives in the address, so that it can be sent and kept. */
class FindLines extends HTMLElement {
  private loaded: Promise<FindIndex[]> | undefined;

  connectedCallback(): void {
    // What was chosen before this script was there stands, beside what the address says.
    const chosen = new Set(this.fields.filter(isChosen));
    this.read(chosen);
    if (chosen.size > 0) this.write();
    void this.show();
    this.addEventListener('change', () => {
      this.write();
      void this.show();
    });
    this.querySelector('form')?.addEventListener('submit', (event) => {
      event.preventDefault();
      this.write();
      void this.show();
    });
    addEventListener('popstate', () => {
      this.read();
      void this.show();
    });
  }

  private get fields(): Field[] {
    return [...this.querySelectorAll<Field>('select, input')];
  }

  private read(except = new Set<Field>()): void {
    const wished = new URLSearchParams(location.search);
    for (const field of this.fields) {
      if (except.has(field)) continue;
      const value = wished.get(field.name) ?? '';
      if (field.type === 'checkbox') field.checked = value === 'yes';
      else if (!(field instanceof HTMLSelectElement) || [...field.options].some((option) => option.value === value)) field.value = value;
      // What narrows the list is in sight where the address asks for it.
      if (value !== '') field.closest('details')?.setAttribute('open', '');
    }
  }

  private write(): void {
    const wished = new URLSearchParams();
    for (const field of this.fields) {
      const value = field.type === 'checkbox' ? (field.checked ? 'yes' : '') : field.value;
      if (value !== '') wished.set(field.name, value);
    }
    history.replaceState(null, '', wished.size === 0 ? location.pathname : `?${wished.toString()}`);
  }

  private wish(): Wish {
    const wished = new URLSearchParams(location.search);
    const text = (name: string) => wished.get(name) ?? '';
    const number = (name: string) => (text(name) === '' || Number.isNaN(Number(text(name))) ? null : Number(text(name)));
    const range = (name: string) => ({ from: number(`${name}-from`), to: number(`${name}-to`) });
    return {
      make: text('make'),
      pe: text('pe'),
      peTo: text('pe-to'),
      about: number('about'),
      diameter: range('diameter'),
      force: range('force'),
      isObtainable: text('obtainable') === 'yes',
      by: text('by') || 'overall',
    };
  }

  private async show(): Promise<void> {
    this.loaded ??= fetch(`${import.meta.env.BASE_URL}find.json`).then((answer) => answer.json() as Promise<FindIndex[]>);
    const divisions = await this.loaded;
    const division = new URLSearchParams(location.search).get('division') ?? '';
    const index = divisions.find((one) => one.division === division) ?? divisions[0];
    const wish = this.wish();
    const table = index?.tables.find(({ code }) => code === wish.by) ?? index?.tables[0];
    const [status, list, more] = [this.querySelector('[role=status]'), this.querySelector('ol'), this.querySelector('.more')];
    if (!index || !table || !status || !list || !more) return;
    const fits = fitsOf(index, wish);
    status.textContent = figures(leadOf(index, table, fits));
    list.replaceChildren(...fits.slice(0, MOST_SHOWN).map((fit) => itemOf(fit, table)));
    const left = fits.length > MOST_SHOWN ? say`${fits.length - MOST_SHOWN} more fit. ` : '';
    more.replaceChildren(left, linkTo(say`${table.name}: all ${table.placed} in the published order`, table.href));
  }
}

function itemOf(fit: Fit, table: FindTable): HTMLLIElement {
  const item = document.createElement('li');
  item.value = fit.row.place;
  const figure = document.createElement('strong');
  figure.append(inSystems(figureOf(fit.row, table)));
  const reasons = document.createElement('span');
  reasons.className = 'label';
  reasons.append(inSystems(reasonsOf(fit, table)));
  item.append(linkTo(figures(fit.line.name), fit.line.href), ': ', figure, reasons);
  return item;
}

customElements.define('find-lines', FindLines);
