import { say } from '../words/say.js';
import { publishedWeights, weigher, type Standing } from '../weigh/stand.js';
import type { Weighed } from '../weigh/weighed.js';
import { chanceWords } from '../words/chance-words.js';
import { nameParts, ownOrderWords, placeWords, publishedPlaceWords, scoreWords } from '../words/weigh-words.js';
import { figures } from '../words/figures.js';

/** Orders a division by the weights of its reader; the address carries them, so that the order can be sent and kept. */
class WeighLines extends HTMLElement {
  private loaded: Promise<Weighed[]> | undefined;
  private ready: { of: Weighed; stand: (weights: readonly string[]) => Standing } | undefined;

  connectedCallback(): void {
    // What was chosen before this script was there stands.
    const only = this.select('only')?.value ?? '';
    this.countOnly(only);
    if (only !== '') this.write(false);
    if (location.search !== '') void this.show();
    this.addEventListener('input', (event) => {
      const name = (event.target as HTMLInputElement).name;
      if (name === 'only') this.countOnly((event.target as HTMLSelectElement).value);
      // Another division has categories and weights of its own.
      this.write(name === 'division');
      void this.show();
    });
    this.querySelector('form')?.addEventListener('reset', (event) => {
      event.preventDefault();
      this.write(true);
      void this.show();
    });
    this.querySelector('form')?.addEventListener('submit', (event) => {
      event.preventDefault();
      this.querySelector('table')?.scrollIntoView();
    });
    this.querySelector('button.whole')?.addEventListener('click', () => this.querySelector('table')?.classList.add('whole'));
    addEventListener('popstate', () => void this.show());
  }

  private countOnly(code: string): void {
    if (code !== '') for (const input of this.inputs) input.value = input.name === code ? '1' : '0';
  }

  private select(name: string): HTMLSelectElement | null {
    return this.querySelector<HTMLSelectElement>(`select[name=${name}]`);
  }

  private get inputs(): HTMLInputElement[] {
    return [...this.querySelectorAll<HTMLInputElement>('input[type=number]')];
  }

  private write(isPublished: boolean): void {
    const wished = new URLSearchParams();
    const division = this.select('division')?.value ?? '';
    if (division !== '') wished.set('division', division);
    if (!isPublished) for (const { name, value, labels } of this.inputs) if (!labels?.[0]?.hidden) wished.set(name, value || '0');
    history.replaceState(null, '', wished.size === 0 ? location.pathname : `?${wished.toString()}`);
  }

  private async show(): Promise<void> {
    this.loaded ??= fetch(`${import.meta.env.BASE_URL}weigh.json`).then((answer) => answer.json() as Promise<Weighed[]>);
    const divisions = await this.loaded;
    const wished = new URLSearchParams(location.search);
    const weighed = divisions.find(({ division }) => division === (wished.get('division') ?? '')) ?? divisions[0];
    if (!weighed) return;
    if (this.ready?.of !== weighed) this.ready = { of: weighed, stand: weigher(weighed) };
    const own = weighed.categories.some(({ code }) => wished.has(code));
    const weights = own ? weighed.categories.map(({ code }) => weightIn(wished.get(code))) : publishedWeights(weighed);
    this.fill(weighed, weights);
    const standing = this.ready.stand(weights);
    const status = this.querySelector('[role=status]');
    if (status)
      status.textContent = weights.every((weight) => Number(weight) === 0)
        ? say`Give at least one category a weight.`
        : figures(ownOrderWords(weighed, standing));
    this.querySelector('tbody')?.replaceChildren(
      ...standing.rows.flatMap((row) => {
        const line = weighed.lines[row.line];
        return line ? [rowOf(line, row)] : [];
      }),
    );
    this.querySelector('.more a')?.setAttribute('href', weighed.href);
    const words = this.querySelector('.score-words');
    if (words) words.textContent = scoreWords(weighed.combine);
  }

  /** Puts what the address says into the fields, but for the one that is being typed into. */
  private fill(weighed: Weighed, weights: readonly string[]): void {
    const counted = weighed.categories.filter((_, at) => Number(weights[at]) > 0);
    const only = this.select('only');
    if (only) only.value = counted.length === 1 ? (counted[0]?.code ?? '') : '';
    const select = this.select('division');
    if (select) select.value = [...select.options].some(({ value }) => value === weighed.division) ? weighed.division : '';
    for (const input of this.inputs) {
      const at = weighed.categories.findIndex(({ code }) => code === input.name);
      if (input.labels?.[0]) input.labels[0].hidden = at < 0;
      if (at >= 0 && input !== document.activeElement) input.value = weights[at] ?? '0';
    }
  }
}

/** A weight of an address: a number from 0 to 100, else none. */
function weightIn(text: string | null): string {
  const weight = Number(text);
  return weight >= 0 && weight <= 100 ? String(weight) : '0';
}

function rowOf(line: Weighed['lines'][number], stood: Standing['rows'][number]): HTMLTableRowElement {
  const { place, score, chanceOfFirst } = stood;
  const [row, head, link] = [document.createElement('tr'), document.createElement('th'), document.createElement('a')];
  row.setAttribute('role', 'row');
  head.setAttribute('role', 'rowheader');
  head.scope = 'row';
  link.href = line.href;
  const [maker, rest] = nameParts(line);
  const madeBy = document.createElement('span');
  madeBy.className = 'maker';
  madeBy.textContent = maker;
  link.append(madeBy, figures(rest));
  head.append(link);
  row.append(
    cellOf(say`Place`, placeWords(stood), 'num'),
    head,
    cellOf(say`Score`, score, 'num score'),
    cellOf(say`Chance of first`, chanceOfFirst === null ? say`not stated` : chanceWords(Math.round(100 * chanceOfFirst)), 'num'),
    cellOf(say`Published place`, publishedPlaceWords(place, line.place), ''),
  );
  return row;
}

function cellOf(label: string, text: string, name: string): HTMLTableCellElement {
  const cell = document.createElement('td');
  cell.setAttribute('role', 'cell');
  cell.dataset['label'] = label;
  cell.className = name;
  cell.textContent = figures(text);
  return cell;
}

customElements.define('weigh-lines', WeighLines);
