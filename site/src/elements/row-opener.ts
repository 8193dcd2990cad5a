import { say } from '../words/say.js';
/** On a phone a row of standings or claims shows what answers; a press shows the rest. Without a script all of it stands there. */
function addOpener(row: HTMLTableRowElement): void {
  const heading = row.querySelector('th');
  if (!heading || !row.querySelector('.folds')) return;
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'opener';
  button.setAttribute('aria-expanded', 'false');
  button.setAttribute('aria-label', say`All about ${heading.querySelector('a')?.textContent ?? heading.textContent}`);
  button.addEventListener('click', () => {
    const isOpen = row.classList.toggle('open');
    button.setAttribute('aria-expanded', String(isOpen));
  });
  heading.append(button);
}

document.querySelectorAll<HTMLTableRowElement>('.sheet tbody tr').forEach(addOpener);
