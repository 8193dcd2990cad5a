import type { Browser, Locator, Page } from 'playwright-core';

/** Tests of what a phone shows, on the pages that `open` opens. */
export function testPhone(open: (path: string, options?: Parameters<Browser['newContext']>[0]) => Promise<Page>, variant: string): void {
  test('at 320 px a table still reads as a table: its rows, heads and cells keep their roles', async () => {
    const page = await open('/editions/2026/breaking-stress/', { viewport: { width: 320, height: 800 } });
    expect((await page.locator('.bar-of-controls .meta').boundingBox())!.height).toBeLessThan(30);
    const table = page.getByRole('table').first();
    expect(await table.getByRole('columnheader').count()).toBeGreaterThan(8);
    // Its words explain themselves, by touch too; Escape closes.
    await page.locator('.terms summary').first().click();
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
  });

  test('what is known of a variant takes five screens at most before its evidence', async () => {
    const page = await open(variant, { viewport: { width: 360, height: 740 } });
    expect(await page.locator('.histories').count()).toBe(1);
    // Words explained stand beside the choice of units.
    const [units, words] = await Promise.all(
      [page.locator('unit-switch').first(), page.locator('.terms').first()].map((one) => one.boundingBox()),
    );
    expect(words!.y).toBeLessThan(units!.y + units!.height);
    expect(await page.evaluate<number>('document.querySelector("#evidence").getBoundingClientRect().top')).toBeLessThanOrEqual(5 * 740);
    // A claim takes two lines: what it is of and the decision, what was measured of what is claimed; a press opens the rest.
    const claims = page.locator('#claims ~ .sheet.claims tbody tr');
    expect(await claims.first().innerText()).toMatch(/^Breaking force[^]*[\d.]+\sN of [\d.]+\sN claimed[^]*[\d.]+\s%/);
    for (const claim of await claims.all()) expect((await claim.boundingBox())!.height).toBeLessThan(80);
    expect(await claims.first().getByRole('cell').count()).toBe(3);
    await claims.first().getByRole('button', { expanded: false }).click();
    expect(await claims.first().getByRole('cell').count()).toBeGreaterThan(5);
    await page.context().close();
  });

  test('the head of a page takes a sixth of a phone', async () => {
    const page = await open('/', { viewport: { width: 360, height: 740 } });
    expect(await page.evaluate<number>('document.querySelector("body > header").getBoundingClientRect().height')).toBeLessThanOrEqual(110);
    await page.context().close();
  });

  test('a long list is folded by kind into two screens; the address of an entry opens it, and so does a search of the browser for words in it', async () => {
    const page = await open('/problems/', { viewport: { width: 360, height: 740 } });
    const shown = () => page.locator('main tbody tr:visible').count();
    expect([await page.locator('main tbody tr').count(), await shown()]).toEqual([expect.any(Number), 0]);
    expect(await page.evaluate<number>('document.documentElement.scrollHeight')).toBeLessThanOrEqual(2 * 740);
    const [entry, words] = await page.locator('main tbody tr').evaluateAll((all) => {
      const row = all.at(-1)!;
      return [row.id, row.querySelector('td:last-child')!.textContent.trim()];
    });
    const address = new URL(page.url());
    await page.goto(`${address.href}#${entry!}`);
    await page.locator(`[id="${entry!}"]`).waitFor();
    expect(await page.evaluate<number>('document.querySelector(":target").getBoundingClientRect().top')).toBeLessThan(740);
    // A text fragment finds words as the browser's own search does.
    await page.goto(`${address.href}?again#:~:text=${encodeURIComponent(words!)}`);
    await page.locator(`[id="${entry!}"]`).waitFor();
    await page.context().close();
    const checks = await open('/checks/');
    expect([(await checks.locator('details.kind').count()) > 1, await checks.locator('main tbody tr:visible').count()]).toEqual([true, 0]);
    await checks.emulateMedia({ media: 'print' });
    expect(await checks.locator('main tbody tr').first().isVisible()).toBe(true);
    await checks.context().close();
  });

  test('a long table is led into: one line of words above it, a press to every tenth place and to what stands below, none while rows are left out', async () => {
    const page = await open('/editions/2026/breaking-stress/', { viewport: { width: 360, height: 740 } });
    const top = (selector: string) => page.evaluate<number>(`document.querySelector('${selector}').getBoundingClientRect().top`);
    expect(Math.abs((await top('.bar-of-controls .terms summary')) - (await top('.bar-of-controls .meta')))).toBeLessThan(12);
    await page.getByRole('link', { name: 'To place' }).first().click();
    const rows = page.locator('#standings tbody tr');
    // A tie holds the places that it takes: the tenth row stands in the place that is led to.
    const placeOf = (row: Locator) => row.locator('.place').innerText();
    expect(await page.locator('.jumps a').first().innerText()).toBe('10');
    expect(await placeOf(page.locator('#standings tr:target'))).toBe(await placeOf(rows.nth(9)));
    expect(await top(':target')).toBeLessThan(740);
    await page.locator('.jumps').getByRole('link', { name: 'below' }).click();
    expect(await top('#below-standings')).toBeLessThan(740);
    expect(await page.locator('.jumps').isVisible()).toBe(true);
    await page.goto(`${new URL(page.url()).origin}/editions/2026/breaking-stress/?order=name`);
    await page.locator('row-filter .state', { hasText: 'by name' }).waitFor();
    expect(await page.locator('.jumps').isVisible()).toBe(false);
    // What belongs to the scheme is folded below a table; where there is room it stands there.
    await page.goto(`${new URL(page.url()).origin}/editions/2026/`);
    const scheme = page.locator('#scheme ~ details p').first();
    expect(await scheme.isVisible()).toBe(false);
    await page.setViewportSize({ width: 1280, height: 900 });
    expect(await scheme.isVisible()).toBe(true);
    await page.setViewportSize({ width: 360, height: 740 });
    // Tables of a page are read alike.
    await page.goto(`${new URL(page.url()).origin}/editions/2026/rigs/`);
    const sizes = await page.evaluate<string[]>(
      "[...document.querySelectorAll('.sheet.narrow')].map((one) => getComputedStyle(one).fontSize)",
    );
    expect([sizes.length > 2, new Set(sizes).size]).toEqual([true, 1]);
    // Of a label the share that was measured is told without a press.
    await page.goto(`${new URL(page.url()).origin}/editions/2026/labels/`);
    expect(await page.locator('td.value').first().innerText()).toMatch(/^[\d.]+\s%, [a-z]/);
    await page.context().close();
  });
}
