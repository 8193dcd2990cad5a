import type { Browser, Page } from 'playwright-core';

/** Top of the first figure that a reader sees below the head of a page [CSS px]. */
const FIRST_FIGURE = `Math.min(...[...document.querySelectorAll('main :is(td.num, .value, strong, dd, .lede)')]
  .filter((one) => one.checkVisibility() && /\\d\\d|\\d\\.\\d/.test(one.textContent))
  .map((one) => one.getBoundingClientRect().bottom + scrollY))`;

/** Tests of what a phone shows, on the pages that `open` opens. */
export function testPhone(open: (path: string, options?: Parameters<Browser['newContext']>[0]) => Promise<Page>, variant: string): void {
  test('at 320 px a table still reads as a table: its rows, heads and cells keep their roles', async () => {
    const page = await open('/editions/2026/breaking-stress/', { viewport: { width: 320, height: 800 } });
    const table = page.getByRole('table').first();
    expect(await table.getByRole('columnheader').count()).toBeGreaterThan(8);
    // Its words explain themselves, by touch too; Escape closes.
    await page.locator('.terms').first().getByRole('button', { name: 'What 95 % interval means' }).click();
    const meaning = page.locator('#term-interval');
    expect(await meaning.isVisible()).toBe(true);
    const box = (await meaning.boundingBox())!;
    expect([box.x >= 0, box.x + box.width <= 320]).toEqual([true, true]);
    await page.keyboard.press('Escape');
    expect(await meaning.isVisible()).toBe(false);
    const row = table
      .getByRole('row')
      .filter({ has: page.getByRole('cell') })
      .first();
    expect(await row.getByRole('rowheader').count()).toBe(1);
    // Two lines answer; a press opens the rest.
    expect((await row.boundingBox())!.height).toBeLessThan(90);
    await row.getByRole('button', { expanded: false }).click();
    expect(await row.getByRole('cell').count()).toBeGreaterThan(8);
    await page.context().close();
  }, 60_000);

  test('a phone shows the first figure of each page without scrolling, below a head of a sixth of its height', async () => {
    const page = await open('/', { viewport: { width: 360, height: 740 } });
    for (const path of [
      '/',
      '/editions/2026/',
      '/editions/2026/breaking-stress/',
      variant,
      ...['/find/', '/weigh/'],
      '/editions/2026/labels/',
      '/records/',
      '/editions/2026/rigs/',
      '/lines/brinewickel/',
      '/makers/quaymarrow/',
    ]) {
      await page.goto(new URL(path, page.url()).href);
      expect([path, (await page.evaluate<number>(FIRST_FIGURE)) < 740]).toEqual([path, true]);
    }
    expect(await page.evaluate<number>('document.querySelector("body > header").getBoundingClientRect().height')).toBeLessThanOrEqual(110);
    await page.context().close();
  }, 60_000);
}
