/** Shows only the rows of a table that have what is chosen, sorted within their groups; the choice lives in the address, so that it can be sent and kept. */
class RowFilter extends HTMLElement {
  connectedCallback() {
    this.read();
    this.apply();
    this.addEventListener('change', () => this.write());
    this.querySelector('button')?.addEventListener('click', () => {
      for (const select of this.selects) select.value = '';
      this.write();
    });
    addEventListener('popstate', () => {
      this.read();
      this.apply();
    });
  }

  private readonly published = new Map<HTMLElement, number>();

  private get selects() {
    return [...this.querySelectorAll('select')];
  }

  private read() {
    const chosen = new URLSearchParams(location.search);
    for (const select of this.selects) {
      const value = chosen.get(select.name) ?? '';
      select.value = [...select.options].some((option) => option.value === value) ? value : '';
    }
  }

  private write() {
    const chosen = new URLSearchParams();
    for (const { name, value } of this.selects) if (value) chosen.set(name, value);
    const query = chosen.toString();
    history.replaceState(null, '', query ? `?${query}` : location.pathname);
    this.apply();
  }

  private apply() {
    const chosen = this.selects.filter(({ name, value }) => name !== 'order' && value !== '');
    const order = this.querySelector<HTMLSelectElement>('select[name=order]');
    const bodies = document.getElementById(this.dataset['table'] ?? '')?.querySelectorAll('tbody') ?? [];
    let [shown, all] = [0, 0];
    for (const body of bodies) {
      const rows = [...body.querySelectorAll<HTMLElement>('tr:not(.group-head)')];
      this.sort(body, rows, order?.value ?? '');
      for (const row of rows) row.hidden = chosen.some(({ name, value }) => row.dataset[name] !== value);
      const count = rows.filter(({ hidden }) => !hidden).length;
      body.hidden = count === 0;
      shown += count;
      all += rows.length;
    }
    const count = chosen.length === 0 ? `All ${all} rows.` : `${shown} of ${all} rows. Places and groups stay those of the whole table.`;
    this.tell(order && order.value !== '' ? `${count} Within each group by ${order.selectedOptions[0]?.text ?? order.value}.` : count);
  }

  /** Rows never leave their group: within one the published order may be chance. */
  private sort(body: HTMLElement, rows: readonly HTMLElement[], by: string) {
    for (const row of rows) if (!this.published.has(row)) this.published.set(row, this.published.size);
    const keyOf = (row: HTMLElement) => (by === 'name' ? (row.querySelector('a')?.textContent ?? '') : (row.dataset[by] ?? ''));
    const sorted = [...rows].sort(
      (one, other) =>
        (by === '' ? 0 : keyOf(one).localeCompare(keyOf(other), 'en', { numeric: true })) ||
        (this.published.get(one) ?? 0) - (this.published.get(other) ?? 0),
    );
    if (sorted.some((row, index) => row !== rows[index])) body.append(...sorted);
  }

  private tell(sentence: string) {
    const status = this.querySelector('[role=status]');
    if (status) status.textContent = sentence;
  }
}

customElements.define('row-filter', RowFilter);
