import { say } from '../words/say.js';
/** Brings out the dots whose names hold what is typed; the others step back. */
class MapFinder extends HTMLElement {
  connectedCallback() {
    const [input, status] = [this.querySelector('input'), this.querySelector('[role=status]')];
    const spots = [...document.querySelectorAll<SVGElement>('.spot[data-name]')];
    input?.addEventListener('input', () => {
      const words = input.value.toLowerCase().split(/\s+/).filter(Boolean);
      const found = spots.filter((spot) => words.every((word) => spot.dataset['name']?.includes(word)));
      for (const spot of spots) {
        spot.classList.toggle('found', words.length > 0 && found.includes(spot));
        spot.classList.toggle('back', words.length > 0 && !found.includes(spot));
      }
      if (status) status.textContent = words.length === 0 ? '' : say`${found.length} of ${spots.length}`;
    });
  }
}

customElements.define('map-finder', MapFinder);
