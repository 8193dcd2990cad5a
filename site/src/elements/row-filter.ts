import { inNameOrder } from '../words/locale.js';
import { say } from '../words/say.js';
type Field = HTMLSelectElement | HTMLInputElement;

/** Shows only the rows of a table that have what is chosen, sorted within their groups; the choice lives in the address, so that it can be sent and kept. */
class RowFilter extends HTMLElement {
  connectedCallback() {
    const details = this.querySelector('details');
    this.read();
    this.apply();
    this.addEventListener('change', () => this.write());
    this.querySelector('.all')?.addEventListener('click', () => {
      for (const field of this.fields) field.value = '';
      this.write();
    });
    const close = () => {
      details?.removeAttribute('open');
      details?.querySelector('summary')?.focus();
    };
    this.querySelector('.done')?.addEventListener('click', close);
    this.addEventListener('keydown', ({ key }) => {
      if (key === 'Escape' && details?.open) close();
    });
    addEventListener('popstate', () => {
      this.read();
      this.apply();
    });
  }

  private readonly published = new Map<HTMLElement, number>();

  private get fields() {
    return [...this.querySelectorAll<Field>('select, input')];
  }

  private read() {
    const chosen = new URLSearchParams(location.search);
    for (const field of this.fields) {
      const value = chosen.get(field.name) ?? '';
      const isKnown = !(field instanceof HTMLSelectElement) || [...field.options].some((option) => option.value === value);
      field.value = isKnown ? value : '';
    }
  }

  private write() {
    const chosen = new URLSearchParams();
    for (const { name, value } of this.fields) if (value) chosen.set(name, value);
    // Which columns are left out is not its to say.
    const without = new URLSearchParams(location.search).get('without');
    if (without) chosen.set('without', without);
    const query = chosen.toString();
    history.replaceState(null, '', query ? `?${query}` : location.pathname);
    this.apply();
  }

  private apply() {
    const chosen = this.fields.filter(({ name, value }) => name !== 'order' && value !== '');
    const order = this.querySelector<HTMLSelectElement>('select[name=order]');
    const body = document.getElementById(this.dataset['table'] ?? '')?.querySelector('tbody');
    if (!body) return;
    const rows = [...body.querySelectorAll<HTMLElement>('tr')];
    this.sort(body, rows, order?.value ?? '');
    for (const row of rows) row.hidden = !chosen.every((field) => holds(field, row));
    // What leads to a place is of the whole table in its order.
    document.querySelector('.jumps')?.toggleAttribute('hidden', chosen.length > 0 || Boolean(order?.value));
    const shown = rows.filter(({ hidden }) => !hidden).length;
    const count = chosen.length === 0 ? say`all ${rows.length}` : say`${chosen.map(wordsOf).join(', ')}: ${shown} of ${rows.length}`;
    const sorted = order && order.value !== '' ? say`; within each group by ${order.selectedOptions[0]?.text ?? order.value}` : '';
    this.tell(count + sorted);
  }

  /** Rows never leave their group: within one the published order may be chance. */
  private sort(body: HTMLElement, rows: readonly HTMLElement[], by: string) {
    for (const row of rows) if (!this.published.has(row)) this.published.set(row, this.published.size);
    const at = (row: HTMLElement) => this.published.get(row) ?? 0;
    const inOrder = rows.toSorted((one, other) => at(one) - at(other));
    const keyOf = (row: HTMLElement) => (by === 'name' ? (row.querySelector('a')?.textContent ?? '') : (row.dataset[by] ?? ''));
    const compare = (one: HTMLElement, other: HTMLElement) =>
      (by === '' ? 0 : inNameOrder(keyOf(one), keyOf(other))) || at(one) - at(other);
    const sorted = runsOf(inOrder).flatMap((run) => run.toSorted(compare));
    if (sorted.some((row, index) => row !== rows[index])) body.append(...sorted);
  }

  private tell(words: string) {
    const [state, status] = [this.querySelector('.state'), this.querySelector('[role=status]')];
    if (state) state.textContent = words;
    if (status) status.textContent = say`Shown: ${words}. Places and groups stay those of the whole table.`;
  }
}

/** Neighbours of one group. */
function runsOf(rows: readonly HTMLElement[]): HTMLElement[][] {
  const runs: HTMLElement[][] = [];
  for (const row of rows) {
    const run = runs.at(-1);
    if (run && run[0]?.dataset['group'] === row.dataset['group']) run.push(row);
    else runs.push([row]);
  }
  return runs;
}

/** Whether a row has what a field asks for: the same, or within an end of a range. */
function holds({ name, value }: Field, row: HTMLElement): boolean {
  const [, quantity, end] = /^(.+)-(from|to)$/.exec(name) ?? [];
  if (quantity === undefined) return row.dataset[name] === value;
  const own = row.dataset[quantity];
  if (own === undefined) return false;
  return end === 'from' ? Number(own) >= Number(value) : Number(own) <= Number(value);
}

function wordsOf(field: Field): string {
  if (field instanceof HTMLSelectElement) return field.selectedOptions[0]?.text ?? field.value;
  return field.name.endsWith('-from') ? say`from ${field.value} mm` : say`up to ${field.value} mm`;
}

customElements.define('row-filter', RowFilter);
