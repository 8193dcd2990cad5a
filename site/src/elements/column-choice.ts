import { say } from '../words/say.js';

/** Lets a reader leave out columns of a table; what is left out stands in the address, so that it can be sent and kept. */
class ColumnChoice extends HTMLElement {
  connectedCallback(): void {
    const table = document.getElementById(this.dataset['table'] ?? '');
    const heads = [...(table?.querySelectorAll<HTMLTableCellElement>('thead th') ?? [])];
    // Without the name of its row a figure says nothing.
    const columns = heads.filter((head) => !head.classList.contains('marks') && head.cellIndex !== nameAt(table));
    const left = new Set(new URLSearchParams(location.search).get('without')?.split(',') ?? []);
    this.querySelector('.filters')?.append(...columns.map((head) => this.choiceOf(head, !left.has(String(head.cellIndex)))));
    for (const head of columns) show(table, head.cellIndex, !left.has(String(head.cellIndex)));
    this.addEventListener('change', ({ target }) => {
      const { value, checked } = target as HTMLInputElement;
      show(table, Number(value), checked);
      this.write();
    });
  }

  private choiceOf(head: HTMLTableCellElement, isShown: boolean): HTMLLabelElement {
    const [label, box] = [document.createElement('label'), document.createElement('input')];
    label.className = 'tick';
    box.type = 'checkbox';
    box.value = String(head.cellIndex);
    box.checked = isShown;
    label.append(box, ` ${wordsOf(head)}`);
    return label;
  }

  private write(): void {
    const left = [...this.querySelectorAll<HTMLInputElement>('input:not(:checked)')].map(({ value }) => value);
    const address = new URL(location.href);
    if (left.length === 0) address.searchParams.delete('without');
    else address.searchParams.set('without', left.join(','));
    history.replaceState(null, '', address);
    const state = this.querySelector('.state');
    if (state) state.textContent = left.length === 0 ? say`all` : say`${left.length} left out`;
  }
}

const nameAt = (table: HTMLElement | null): number => table?.querySelector<HTMLTableCellElement>('tbody th')?.cellIndex ?? -1;

/** What a head says where it is seen; a drawing's head says it to who listens. */
function wordsOf(head: HTMLTableCellElement): string {
  const words = head.querySelector(':scope > a, :scope > span[id], :scope > span:not(.unit)') ?? head;
  return words.textContent.trim().replaceAll(/\s+/g, ' ');
}

function show(table: HTMLElement | null, at: number, isShown: boolean): void {
  for (const row of table?.querySelectorAll('tr') ?? []) row.cells[at]?.classList.toggle('left-out', !isShown);
}

customElements.define('column-choice', ColumnChoice);
