import axe from 'axe-core';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

/**
 * axe on a page as it stands: what it violates, each rule with the first place. Its script goes into a page once.
 * @param isContrastOnly asks for colours alone: of all rules only that of contrast looks at them
 */
export async function axeFaults(page: Page, isContrastOnly = false): Promise<string[]> {
  if (!(await page.evaluate('"axe" in window'))) await page.evaluate(axe.source);
  const options = JSON.stringify({
    resultTypes: ['violations'],
    ...(isContrastOnly ? { runOnly: { type: 'rule', values: ['color-contrast'] } } : {}),
  });
  const { violations, passes } = (await page.evaluate(`axe.run(document, ${options})`)) as AxeResults;
  if (passes.length === 0) return ['axe looked at nothing'];
  return violations.map(({ id, nodes }) => `${id} at ${nodes[0]?.html.slice(0, 140)}`);
}

/**
 * What is wrong with a page in both themes: axe's violations, and what has to be scrolled sideways at a width. Colours are those of a theme whatever the width, so that they
 * are asked for once in the dark.
 * @param widths at which it is looked at [CSS px]
 */
export async function faultsOfPage(page: Page, name: string, widths: readonly number[]): Promise<string[]> {
  const faults: string[] = [];
  await page.evaluate('document.querySelectorAll("details").forEach((one) => { one.open = true; })');
  await page.emulateMedia({ colorScheme: 'light' });
  for (const width of widths) {
    await page.setViewportSize({ width, height: 900 });
    faults.push(...(await axeFaults(page)).map((fault) => `${name} light ${width}: ${fault}`));
    const wider = (await page.evaluate('document.documentElement.scrollWidth - innerWidth')) as number;
    if (wider > 0) faults.push(`${name} ${width}: ${wider} px too wide`);
  }
  await page.emulateMedia({ colorScheme: 'dark' });
  faults.push(...(await axeFaults(page, true)).map((fault) => `${name} dark: ${fault}`));
  return faults;
}
