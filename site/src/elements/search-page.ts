import { say } from '../words/say.js';
import MiniSearch from 'minisearch';
import type { InSystems } from '../words/find-words.js';
import { inSystems } from './dom-table.js';
import { isWord, term, tokens } from '../words/search-terms.js';
import { figures } from '../words/figures.js';

interface Entry {
  readonly id: string;
  readonly kind: string;
  readonly name: string;
  readonly more: string;
  readonly figures?: InSystems;
}

const MOST_SHOWN = 40;

/** Looks in the names that the site knows, as one types; the words stand in the address, so that a search can be kept and sent. */
class SearchPage extends HTMLElement {
  private index: Promise<MiniSearch<Entry>> | undefined;

  connectedCallback(): void {
    const [form, input] = [this.querySelector('form'), this.querySelector('input')];
    if (!form || !input) return;
    // What was typed before this ran stays.
    if (input.value === '') input.value = new URLSearchParams(location.search).get('q') ?? '';
    const look = () => void this.look(input.value.trim());
    input.addEventListener('input', look);
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      look();
    });
    if (input.value !== '') look();
  }

  private async look(words: string): Promise<void> {
    const address = new URL(location.href);
    if (words === '') address.searchParams.delete('q');
    else address.searchParams.set('q', words);
    history.replaceState(null, '', address);
    this.show(
      words,
      words === ''
        ? []
        : ((await this.loaded()).search(words, {
            prefix: isWord,
            fuzzy: (word) => isWord(word) && 0.2,
            combineWith: 'AND',
          }) as unknown as Entry[]),
    );
  }

  private loaded(): Promise<MiniSearch<Entry>> {
    this.index ??= fetch(`${import.meta.env.BASE_URL}search-index.json`)
      .then((answer) => answer.json() as Promise<Entry[]>)
      .then((entries) => {
        const index = new MiniSearch<Entry>({
          fields: ['name', 'more', 'kind', 'also'],
          storeFields: ['name', 'more', 'kind', 'figures'],
          tokenize: tokens,
          processTerm: term,
        });
        index.addAll(entries);
        return index;
      });
    return this.index;
  }

  private show(words: string, found: readonly Entry[]): void {
    const [status, list] = [this.querySelector('[role=status]'), this.querySelector('ol')];
    if (!status || !list) return;
    const more = found.length > MOST_SHOWN ? say`; the first ${MOST_SHOWN} are shown` : '';
    status.textContent = words === '' ? '' : say`${found.length === 0 ? say`Nothing` : found.length} found for “${words}”${more}.`;
    list.replaceChildren(
      ...found.slice(0, MOST_SHOWN).map(({ id, kind, name, more: make, figures: measures }) => {
        const [item, link, note] = [document.createElement('li'), document.createElement('a'), document.createElement('span')];
        link.href = id;
        link.textContent = figures(name);
        note.className = 'label';
        note.textContent = make === '' ? kind : figures(`${kind}, ${make}`);
        if (measures?.[0]?.text) note.append(', ', inSystems(measures));
        item.append(link, note);
        return item;
      }),
    );
  }
}

customElements.define('search-page', SearchPage);
