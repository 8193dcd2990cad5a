/** Every screen of the desk of a house with a past, read for short names where people's names belong. */
import { setTimeout } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { demoAdmin, demoEditor, demoReviewers, demoTesters } from '../../prisma/seed/demo-accounts.js';
import type { DemoAccount } from '../../prisma/seed/demo-accounts.js';
import { HouseClient } from '../../prisma/seed/loader/house-client.js';
import { launchBrowser, watchRequests } from './browser.js';
import { signOut } from './desk.js';
import { shareDesk } from './shared-desk.js';

interface Slugged {
  readonly items: readonly { readonly slug: string }[];
}

/** The test of it, in a house with the demo. */
export function testDeskNames(house: () => { readonly url: string; readonly dataFolder: string }): void {
  test('no screen of the desk shows a short name where a variant, a category, a method or a division has a name', async () => {
    const { url, dataFolder } = house();
    await shareDesk(dataFolder);
    const editor = await HouseClient.signedIn(url, demoEditor);
    const slugsAt = async (path: string) => (await editor.get<Slugged>(path)).items.map(({ slug }) => slug);
    const known = [
      ...(await slugsAt('/v1/catalogue/variants?limit=200')),
      ...(await slugsAt('/v1/catalogue/lines?limit=200')),
      ...(await slugsAt('/v1/catalogue/methods?limit=200')),
      ...(
        await editor.get<{ items: readonly { slug: string; rules: { categories: readonly { code: string }[] } }[] }>('/v1/schemes')
      ).items.flatMap(({ slug, rules }) => [slug, ...rules.categories.map(({ code }) => code)]),
    ];
    // A word alone may be a word: only what is joined by hyphens is looked for, and the names of it are taken away first.
    const slugs = new Set(known.filter((slug) => slug.includes('-')));
    const waiting = await editor.get<{ items: readonly { reference: string }[] }>('/v1/submissions?state=submitted&limit=1');
    const [anyVariant = ''] = known;
    await editor.signOut();
    const browser = await launchBrowser();
    const shown: string[] = [];
    const readAs = async ({ email, password }: DemoAccount, paths: readonly string[]) => {
      const page = await (await browser.newContext({ viewport: { width: 1280, height: 740 } })).newPage();
      await page.goto(`${url}/desk/`);
      await page.getByLabel('E-mail').fill(email);
      await page.getByLabel('Password').fill(password);
      await page.getByRole('button', { name: 'Sign in' }).click();
      await page.getByRole('button', { name: 'Sign out' }).waitFor();
      const quiet = watchRequests(page);
      if (email === demoEditor.email) shown.push(...(await slugsBeforeNames(page, url, slugs)));
      for (const path of paths) {
        await page.goto(url + path);
        await quiet();
        shown.push(...(await slugsOn(page, quiet, slugs)).map((slug) => `${path}: ${slug}`));
      }
      await signOut(page);
      await page.context().close();
    };
    await readAs(demoEditor, [
      '/desk/',
      '/desk/season/',
      '/desk/season/?edition=2027',
      '/desk/season/?edition=2026',
      '/desk/catalogue/',
      '/desk/methods/',
      '/desk/statements/',
      '/desk/proposals/',
      '/desk/rigs/',
      `/desk/correct/?kind=variant&key=${anyVariant}`,
    ]);
    await readAs(demoReviewers[0], [
      '/desk/',
      '/desk/review/',
      `/desk/review-one/?reference=${waiting.items[0]?.reference ?? ''}`,
      '/desk/proposals/',
      '/desk/rigs/',
    ]);
    await readAs(demoTesters[0], ['/desk/', '/desk/bench/', '/desk/submissions/', '/desk/file/', '/desk/account/', '/desk/rigs/']);
    await readAs(demoAdmin, ['/desk/', '/desk/house/']);
    await browser.close();
    expect(slugs.size).toBeGreaterThan(60);
    expect(shown).toEqual([]);
  }, 1_800_000);
}

/** The charts of the rigs while the names of the methods are still on their way. */
async function slugsBeforeNames(page: Page, url: string, slugs: ReadonlySet<string>): Promise<string[]> {
  const names = Promise.withResolvers<undefined>();
  await page.route('**/v1/catalogue/methods*', async (route) => {
    await names.promise;
    await route.continue();
  });
  await page.goto(`${url}/desk/rigs/`);
  await page.locator('.multiples h3').first().waitFor();
  const early = wordsOf(await page.locator('main').innerText(), slugs);
  names.resolve(undefined);
  await page.unrouteAll({ behavior: 'wait' });
  return early.map((slug) => `before its name: ${slug}`);
}

const wordsOf = (text: string, slugs: ReadonlySet<string>): string[] =>
  [...new Set(text.split(/[^\w-]+/))].filter((word) => slugs.has(word));

/** What is folded is opened, what is worked out on request is asked for, and all of it is read: a choice with everything that can be chosen. */
async function slugsOn(page: Page, quiet: () => Promise<void>, slugs: ReadonlySet<string>): Promise<string[]> {
  for (const look of await page.getByRole('button', { name: 'Look at the standings' }).all()) {
    await look.click();
    await page.getByText('as it would be published now').first().waitFor({ timeout: 60_000 });
  }
  await page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })");
  await quiet();
  // Three dots stand where something is still fetched, a name too: read only when none does.
  while ((await page.locator('main').innerText()).includes('…')) await setTimeout(20);
  const text = (await page.evaluate(
    "document.querySelector('main').innerText + ' ' + [...document.querySelectorAll('option')].map((one) => one.textContent).join(' ')",
  )) as string;
  return wordsOf(text, slugs);
}
