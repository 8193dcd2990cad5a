import { say } from '../words/say.js';
import type { ComparedTables } from '../weigh/compared.js';
import { verdictWords } from '../words/compare-words.js';
import { besideTable, figuresTable, wordsBeside, type Chosen } from './compared-tables.js';

/** Puts the chosen variants side by side; the choice lives in the address, so that it can be sent and kept. */
class CompareVariants extends HTMLElement {
  private loaded: Promise<ComparedTables[]> | undefined;

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
      status.textContent = say`Choose at least two different variants.`;
      place.replaceChildren();
      return;
    }
    this.loaded ??= fetch(`${import.meta.env.BASE_URL}compare.json`).then((answer) => answer.json() as Promise<ComparedTables[]>);
    const all = await this.loaded;
    const named = [...chosen].flatMap(([slug, choice]) =>
      all.flatMap((tables) => tables.variants.filter((one) => one.slug === slug).map((one) => ({ tables, variant: { ...one, choice } }))),
    );
    const [tables, ...others] = new Set(named.map((one) => one.tables));
    if (!tables || others.length > 0) {
      const names = [tables, ...others].map((one) => one?.name).join(say` and `);
      status.textContent = say`Lines of different divisions are not compared: ${names}. Choose variants of one.`;
      place.replaceChildren();
      return;
    }
    const variants = named.map(({ variant }) => variant);
    const [first, ...rest] = variants as [Chosen, ...Chosen[]];
    status.textContent = rest.map((other) => verdictWords(tables, first, other)).join(' ');
    place.replaceChildren(
      ...rest.map((other) => besideTable(tables, first, other)),
      figuresTable(tables, variants),
      ...wordsBeside(tables, variants),
    );
  }
}

customElements.define('compare-variants', CompareVariants);
