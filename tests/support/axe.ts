import axe from 'axe-core';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const RULES = {
  all: {},
  /** Of all rules only that of contrast looks at colours. */
  colours: { runOnly: { type: 'rule', values: ['color-contrast'] } },
  /** With the size of targets and their distance (WCAG 2.2, 2.5.8), which axe asks for by name alone. */
  'all but colours': { rules: { 'color-contrast': { enabled: false }, 'target-size': { enabled: true } } },
};

/**
 * axe on a page as it stands: what it violates, each rule with the first place. Its script goes into a page once.
 * @param within what is looked at, by a selector; nothing is violated where nothing fits it
 */
export async function axeFaults(page: Page, rules: keyof typeof RULES = 'all', within?: string): Promise<string[]> {
  if (!(await page.evaluate('"axe" in window'))) await page.evaluate(axe.source);
  if (within !== undefined && (await page.locator(within).count()) === 0) return [];
  const options = JSON.stringify({ resultTypes: ['violations'], ...RULES[rules] });
  const { violations, passes } = (await page.evaluate(`axe.run(${JSON.stringify(within ?? 'html')}, ${options})`)) as AxeResults;
  if (passes.length === 0 && within === undefined) return ['axe looked at nothing'];
  return violations.map(({ id, nodes }) => `${id} at ${nodes[0]?.html.slice(0, 140)}`);
}

/** Which elements are shown, and how each is laid out: where both are the same, axe sees the same. */
const SHOWN = `[...document.querySelectorAll('body *')].map((one) => (one.checkVisibility() ? getComputedStyle(one).display : '')).join(' ')`;

/**
 * What is wrong with a page in both themes: axe's violations, and what has to be scrolled sideways at a width. axe looks again at a width only where it shows something else
 * than at those before; colours are those of a theme whatever the width, so that they are asked for once in the dark.
 * @param widths at which it is looked at [CSS px]
 */
export async function faultsOfPage(page: Page, name: string, widths: readonly number[]): Promise<string[]> {
  const faults: string[] = [];
  const seen = new Set<string>();
  await page.evaluate('document.querySelectorAll("details").forEach((one) => { one.open = true; })');
  await page.emulateMedia({ colorScheme: 'light' });
  for (const width of widths) {
    await page.setViewportSize({ width, height: 900 });
    const shown = (await page.evaluate(SHOWN)) as string;
    if (!seen.has(shown)) faults.push(...(await axeFaults(page)).map((fault) => `${name} light ${width}: ${fault}`));
    seen.add(shown);
    const wider = (await page.evaluate('document.documentElement.scrollWidth - innerWidth')) as number;
    if (wider > 0) faults.push(`${name} ${width}: ${wider} px too wide`);
  }
  await page.emulateMedia({ colorScheme: 'dark' });
  faults.push(...(await axeFaults(page, 'colours')).map((fault) => `${name} dark: ${fault}`));
  return faults;
}
