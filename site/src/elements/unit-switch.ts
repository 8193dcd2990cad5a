import { remember } from './remember.js';

/** Shows figures in SI units or in those of the trade, on every page from then on. */
class UnitSwitch extends HTMLElement {
  connectedCallback() {
    const button = this.querySelector('button');
    if (!button) return;
    const show = () => button.setAttribute('aria-pressed', String(document.documentElement.dataset['units'] === 'trade'));
    button.addEventListener('click', () => {
      remember('units', document.documentElement.dataset['units'] === 'trade' ? '' : 'trade');
      show();
    });
    show();
  }
}

customElements.define('unit-switch', UnitSwitch);
