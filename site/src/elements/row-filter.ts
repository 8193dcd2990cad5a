/** Shows only the rows of a table that have what is chosen; the choice lives in the address, so that it can be sent and kept. */
class RowFilter extends HTMLElement {
  connectedCallback() {
    const form = this.querySelector('form');
    if (!form) return;
    this.read(form);
    this.apply(form);
    form.addEventListener('change', () => this.write(form));
    form.addEventListener('submit', (event) => event.preventDefault());
    // A reset empties the fields only after its event.
    form.addEventListener('reset', () => setTimeout(() => this.write(form)));
    addEventListener('popstate', () => {
      this.read(form);
      this.apply(form);
    });
  }

  private read(form: HTMLFormElement) {
    const chosen = new URLSearchParams(location.search);
    for (const select of form.querySelectorAll('select')) {
      const value = chosen.get(select.name) ?? '';
      select.value = [...select.options].some((option) => option.value === value) ? value : '';
    }
  }

  private write(form: HTMLFormElement) {
    const chosen = new URLSearchParams();
    for (const { name, value } of form.querySelectorAll('select')) if (value) chosen.set(name, value);
    const query = chosen.toString();
    history.replaceState(null, '', query ? `?${query}` : location.pathname);
    this.apply(form);
  }

  private apply(form: HTMLFormElement) {
    const chosen = [...form.querySelectorAll('select')].filter(({ value }) => value !== '');
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
    const status = this.querySelector('[role=status]');
    if (status)
      status.textContent =
        chosen.length === 0 ? `All ${all} rows.` : `${shown} of ${all} rows. Places and groups stay those of the whole table.`;
  }
}

customElements.define('row-filter', RowFilter);
