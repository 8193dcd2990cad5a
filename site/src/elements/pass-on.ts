import { say } from '../words/say.js';
import { shownText } from './shown-text.js';

/** What a page offers to those who tell others of it: its citation to copy, a link to each row, each table and chart as a picture. */
class PassOn extends HTMLElement {
  connectedCallback() {
    const told = document.createElement('output');
    const copy = (text: string, what: string) =>
      navigator.clipboard.writeText(text).then(
        () => (told.textContent = say`${what} is copied.`),
        () => (told.textContent = say`Your browser does not let a page copy. ${what}: ${text}`),
      );
    const citation = this.querySelector('p')?.textContent.trim().replaceAll(/\s+/g, ' ') ?? '';
    this.append(
      buttonOf(say`Copy the citation`, () => void copy(citation, say`The citation`)),
      this.pictures(told),
      told,
    );
    for (const row of document.querySelectorAll<HTMLTableRowElement>('main tr[id]'))
      addLink(row, (href) => void copy(href, say`The link to the row`));
    const { source = '', address = '' } = this.dataset;
    document.documentElement.style.setProperty('--foot', JSON.stringify(`${source}. ${address}`));
  }

  /** A choice of what can be seen on this page, and a button for each kind of picture. */
  private pictures(told: HTMLElement): HTMLElement {
    const pictured = [...document.querySelectorAll<HTMLElement>('main :is(table.sheet, figure:has(svg))')];
    const choice = document.createElement('select');
    choice.append(...pictured.map((one, index) => new Option(shortened(nameOf(one)), String(index))));
    const label = document.createElement('label');
    label.append(say`A picture of `, choice);
    const save = (kind: 'png' | 'svg') => async () => {
      const one = pictured[Number(choice.value)];
      if (!one) return;
      const { savePicture } = await import('./save-picture.js');
      const { title = '', source = '', address = '' } = this.dataset;
      const [name, mark] = [nameOf(one), document.querySelector('header .mark')?.textContent];
      const frame = { title, name: title.startsWith(name) ? '' : name, source: mark ? `${source}. ${mark}` : source, address };
      const file = await savePicture(one, kind, frame);
      told.textContent = say`Saved as ${file}.`;
    };
    const part = document.createElement('p');
    part.hidden = pictured.length === 0;
    part.append(
      label,
      buttonOf('PNG', () => void save('png')()),
      buttonOf('SVG', () => void save('svg')()),
    );
    return part;
  }
}

function buttonOf(words: string, act: () => void): HTMLButtonElement {
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = words;
  button.addEventListener('click', act);
  return button;
}

const LONGEST = 60;

/** What a table or chart is called: by its own first sentence, else by the heading above it. */
function nameOf(one: HTMLElement): string {
  const headings = [...document.querySelectorAll<HTMLElement>('main :is(h1, h2, h3, details:has(table, figure) > summary)')];
  const above = headings.findLast((heading) => heading.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING);
  const own = one.querySelector('figcaption') ?? above;
  const [sentence = ''] = own ? shownText(own).split(/(?<=\.) /) : [];
  return sentence.replace(/\.$/, '');
}

const shortened = (words: string): string => (words.length > LONGEST ? `${words.slice(0, LONGEST)}…` : words);

/** A link to a row that also copies itself. */
function addLink(row: HTMLTableRowElement, copy: (href: string) => void): void {
  const heading = row.querySelector('th');
  if (!heading) return;
  const link = document.createElement('a');
  link.href = `#${row.id}`;
  link.className = 'row-link';
  link.textContent = '#';
  link.setAttribute('aria-label', say`Link to the row of ${heading.querySelector('a')?.textContent ?? heading.textContent}`);
  link.addEventListener('click', () => copy(link.href));
  (heading.querySelector('.label') ?? heading).append(' ', link);
}

customElements.define('pass-on', PassOn);
