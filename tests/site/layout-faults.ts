/** Tables that end right of the window or of what the page holds, each by its beginning. */
export const PAST_THE_EDGE = `[...document.querySelectorAll('table')]
  .filter((one) => one.getBoundingClientRect().right > Math.min(innerWidth, document.querySelector('main').getBoundingClientRect().right) + 0.5)
  .map((one) => one.textContent.trim().slice(0, 40))`;

/** Words of heads that are broken over lines, or parted from the mark that explains them. */
export const BROKEN_HEADS = `[...document.querySelectorAll('thead th')].flatMap((head) => {
  const range = document.createRange();
  const texts = document.createTreeWalker(head, NodeFilter.SHOW_TEXT);
  const broken = [];
  let last;
  for (let text = texts.nextNode(); text; text = texts.nextNode()) {
    if (!text.parentElement.checkVisibility() || text.parentElement.closest('.only-heard')) continue;
    for (const word of text.data.matchAll(/[^\\s-]+/g)) {
      range.setStart(text, word.index);
      range.setEnd(text, word.index + word[0].length);
      if (new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1) broken.push(word[0]);
      if (word[0] === '?' && Math.abs(range.getBoundingClientRect().bottom - last.bottom) > 8) broken.push('mark');
      if (/\\w/.test(word[0])) last = range.getBoundingClientRect();
    }
  }
  return broken;
})`;

/** Heads of a row whose words stand so close that they read as one, each by the later one's words. */
export const HARD_HEADS = `[...document.querySelectorAll('thead tr')].filter((row) => row.closest('thead').offsetWidth > 1).flatMap((row) => {
  const range = document.createRange();
  const words = [...row.children].map((head) => {
    const boxes = [];
    const texts = document.createTreeWalker(head, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text; text = texts.nextNode()) {
      if (!text.parentElement.checkVisibility() || text.parentElement.closest('.only-heard') || !/\\w/.test(text.data)) continue;
      range.selectNodeContents(text);
      boxes.push(...range.getClientRects());
    }
    return boxes;
  });
  return [...row.children].slice(1).filter((_, at) => words[at + 1].some((box) => words[at].some((before) =>
    Math.min(box.bottom, before.bottom) - Math.max(box.top, before.top) > 4 && box.left - before.right < 5)))
    .map((head) => head.innerText.trim());
})`;

/** Cells of a row that lie over each other, each by what it holds. */
export const OVER_EACH_OTHER = `[...document.querySelectorAll('tbody tr')].flatMap((row) => {
  const cells = [...row.children].filter((one) => one.checkVisibility() && !one.matches('.marks'));
  const boxes = cells.map((one) => [one.textContent.trim().slice(0, 20), one.getBoundingClientRect()]);
  return boxes.flatMap(([words, box], at) => boxes.slice(at + 1)
    .filter(([, other]) => Math.min(box.right, other.right) - Math.max(box.left, other.left) > 2
      && Math.min(box.bottom, other.bottom) - Math.max(box.top, other.top) > 2)
    .map(([others]) => words + ' and ' + others));
})`;
