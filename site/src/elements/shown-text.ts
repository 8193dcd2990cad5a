/** What can be read in a part of the page: neither what is said to a screen reader alone nor the other units. */
export function shownText(part: HTMLElement): string {
  const shown = (node: Node): string => {
    if (node.nodeType === Node.TEXT_NODE) return node.textContent ?? '';
    if (!(node instanceof HTMLElement)) return '';
    const isSpoken = node.matches('.only-heard, .pad, .stacked-only, button, .row-link, .rival');
    if (isSpoken || (node !== part && getComputedStyle(node).display === 'none')) return '';
    const inside = [...node.childNodes].map(shown).join('');
    return node.matches('.label, .unit') ? ` ${inside}` : inside;
  };
  return shown(part).trim().replaceAll(/\s+/g, ' ');
}
