import type { Browser, Page } from 'playwright-core';

/** Foot of the first figure that a reader sees below the head of a page: a number, or a dot of a map [CSS px]. */
const FIRST_FIGURE = `Math.min(...[...document.querySelectorAll('main :is(td.num, .value, strong, dd, .lede, .found .label, .line-map .dot)')]
  .filter((one) => one.checkVisibility() && (one.matches('.dot') || /\\d\\d|\\d\\.\\d/.test(one.textContent)))
  .map((one) => one.getBoundingClientRect().bottom + scrollY))`;
/** Foot of the first sentence, row or choice below the heading of a page that has words alone [CSS px]. */
const FIRST_WORDS = `Math.min(...[...document.querySelectorAll('main :is(p, li, td, dd, select)')]
  .filter((one) => one.checkVisibility() && one.textContent.trim().length > 10)
  .map((one) => one.getBoundingClientRect().bottom + scrollY))`;

/** What answers in words: no figure is published there, or none before the reader has chosen. */
const IN_WORDS = /^\/(editions\/|lines\/|methods\/|checks\/|problems\/|data\/|read\/.*|compare\/|who-we-are\/|404\.html)$/;
const SCREENS = [
  { width: 360, height: 740 },
  { width: 1280, height: 900 },
];

/** Tests of what a phone shows, on the pages that `open` opens. */
export function testPhone(
  open: (path: string, options?: Parameters<Browser['newContext']>[0]) => Promise<Page>,
  kinds: readonly string[],
): void {
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

  test.each(SCREENS)(
    'every kind of page answers in its first screen of $width × $height px',
    async (viewport) => {
      const page = await open('/', { viewport });
      const late: string[] = [];
      for (const path of kinds) {
        await page.goto(new URL(path, page.url()).href);
        const isInWords = IN_WORDS.test(path);
        if (!isInWords) await page.waitForFunction(`${FIRST_FIGURE} < Infinity`);
        const foot = await page.evaluate<number>(isInWords ? FIRST_WORDS : FIRST_FIGURE);
        if (foot > viewport.height) late.push(`${path}: ${foot.toFixed(0)} px down`);
      }
      expect(late).toEqual([]);
      await page.context().close();
    },
    120_000,
  );

  test('the head of a page takes a sixth of a phone', async () => {
    const page = await open('/', { viewport: { width: 360, height: 740 } });
    expect(await page.evaluate<number>('document.querySelector("body > header").getBoundingClientRect().height')).toBeLessThanOrEqual(110);
    await page.context().close();
  }, 60_000);
}
