import type { Page } from 'playwright-core';

/** Day, month, year, hour, minute, half of the day, calendar. */
const PARTS_OF_DAY = 7;

/** What somebody comes to by Tab: of a group of radio buttons one, of what is folded nothing. */
const STOPS = `[...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')].filter((one) =>
  !one.disabled && one.checkVisibility({ visibilityProperty: true }) &&
  (one.type !== 'radio' || one.checked || !document.querySelector('input[name="' + one.name + '"]:checked')))`;

/** Notes each stop as it is come to, and whether it stands out and lies in sight there. */
const WATCH = `
  // The way begins at the head of the page, wherever the screen put somebody.
  document.body.tabIndex = -1;
  document.body.focus();
  document.body.removeAttribute('tabindex');
  window.stops = ${STOPS};
  window.met = new Map();
  window.addEventListener('focusin', ({ target }) => {
    const { outlineStyle, outlineWidth } = getComputedStyle(target);
    const { top, bottom, left, right } = target.getBoundingClientRect();
    const faults = [];
    if (outlineStyle === 'none' || parseFloat(outlineWidth) < 2) faults.push('nothing shows that it has the focus');
    if (bottom <= 0 || right <= 0 || top >= innerHeight || left >= innerWidth) faults.push('it has the focus out of sight');
    window.met.set(target, faults);
  });
  scrollTo(0, 0);
  [window.stops.length, document.querySelectorAll('input[type^="date"]').length]`;

const FOUND = `(() => {
  const name = (one) => one.outerHTML.slice(0, 120);
  return [
    ...window.stops.filter((one) => one.isConnected && !window.met.has(one)).map((one) => 'not come to by Tab: ' + name(one)),
    ...[...window.met].flatMap(([one, faults]) => faults.map((fault) => fault + ': ' + name(one))),
    ...[...document.querySelectorAll('[tabindex]')].filter((one) => one.tabIndex > 0).map((one) => 'out of its order: ' + name(one)),
  ];
})()`;

/**
 * Goes over a page by Tab alone, from its beginning to its end.
 * @returns what is not come to (a trap too: nothing behind it is), what does not show that it has the focus
 */
export async function faultsByTab(page: Page): Promise<string[]> {
  const [stops, days] = (await page.evaluate(WATCH)) as [number, number];
  if (stops === 0) return ['there is nothing to come to'];
  // A day is gone through by its parts; behind the last stop the page begins anew.
  for (let i = 0; i < stops + days * PARTS_OF_DAY; i += 1) await page.keyboard.press('Tab');
  return (await page.evaluate(FOUND)) as string[];
}
