/** Shows only the rows of a table that have what is chosen; the choice lives in the address, so that it can be sent and kept. */
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
    const chosen = this.selects.filter(({ value }) => value !== '');
    const bodies = document.getElementById(this.dataset['table'] ?? '')?.querySelectorAll('tbody') ?? [];
    let [shown, all] = [0, 0];
    for (const body of bodies) {
      const rows = [...body.querySelectorAll<HTMLElement>('tr:not(.group-head)')];
      for (const row of rows) row.hidden = chosen.some(({ name, value }) => row.dataset[name] !== value);
      const count = rows.filter(({ hidden }) => !hidden).length;
      body.hidden = count === 0;
      shown += count;
      all += rows.length;
    }
    this.tell(chosen.length === 0 ? `All ${all} rows.` : `${shown} of ${all} rows. Places and groups stay those of the whole table.`);
  }

  private tell(sentence: string) {
    const status = this.querySelector('[role=status]');
    if (status) status.textContent = sentence;
  }
}

customElements.define('row-filter', RowFilter);
