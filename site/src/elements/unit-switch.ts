import { remember } from '../../look/remember.js';

/** Shows figures in SI units, in those of the trade, or with kilograms-force, on every page from then on. */
class UnitSwitch extends HTMLElement {
  connectedCallback() {
    const select = this.querySelector('select');
    if (!select) return;
    select.value = document.documentElement.dataset['units'] ?? '';
    select.addEventListener('change', () => {
      remember('units', select.value);
    });
  }
}

customElements.define('unit-switch', UnitSwitch);
