import { remember } from '../../look/remember.js';

/** The reader's theme: as the system, light or dark. */
class ThemeSwitch extends HTMLElement {
  connectedCallback() {
    const select = this.querySelector('select');
    if (!select) return;
    select.value = document.documentElement.dataset['theme'] ?? '';
    select.addEventListener('change', () => remember('theme', select.value));
  }
}

customElements.define('theme-switch', ThemeSwitch);
