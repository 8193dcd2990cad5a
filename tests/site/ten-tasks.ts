import type { Locator, Page } from 'playwright-core';

/** As many presses as a reader should need from the front to an answer. */
const MOST_PRESSES = 3;

/** A reader at the front page: whatever is pressed, chosen or typed into counts, and Enter after typing. */
interface Reader {
  readonly page: Page;
  press(what: Locator): Promise<void>;
  choose(what: Locator, label: string): Promise<void>;
  type(what: Locator, text: string): Promise<void>;
  enter(): Promise<void>;
}

type Task = (reader: Reader) => Promise<unknown>;

const section = ({ page }: Reader, category: string) => page.locator('section', { has: page.getByRole('heading', { name: category }) });
const first = ({ page }: Reader) => page.locator('.front tbody th > a').first();
const status = ({ page }: Reader, words: RegExp) => page.getByRole('status').filter({ hasText: words }).first().waitFor();

const TASKS: Record<string, Task> = {
  'the strongest near 0.25 mm that can be bought': async (reader) => {
    await reader.press(section(reader, 'Breaking stress').getByRole('link', { name: 'Find a line by it' }));
    await reader.type(reader.page.getByLabel('Diameter about, mm'), '0.25');
    await reader.press(reader.page.getByLabel('only what can be bought'));
    await reader.page.waitForURL(/by=breaking-stress.*about=0\.25.*obtainable=yes/);
    await status(reader, /stands first of the \d+ that fit|is the only one/);
  },
  'whether one line is ahead of another': async (reader) => {
    await reader.press(reader.page.getByRole('link', { name: 'compare', exact: true }));
    // All choices are read at once, which waits for none of them.
    await reader.page.waitForURL('**/compare/');
    const choices = reader.page.locator('compare-variants select');
    const names = await choices.nth(0).locator('option[value]:not([value=""])').allInnerTexts();
    await reader.choose(choices.nth(0), names[0]!);
    await reader.choose(choices.nth(1), names[1]!);
    await status(reader, /Overall/);
  },
  'the best keeper of a knot among PE 1.0': async (reader) => {
    await reader.press(section(reader, 'Knot retention').getByRole('link', { name: 'Find a line by it' }));
    await reader.choose(reader.page.getByLabel('PE number'), 'PE 1.0');
    await reader.page.waitForURL(/by=knot-retention.*pe=1\.0/);
    await status(reader, /stands first|is the only one/);
  },
  'what changed': async (reader) => {
    await reader.press(reader.page.getByRole('link', { name: 'what changed' }));
    await reader.page.getByText(/values changed beyond noise/).waitFor();
  },
  'why a line is missing': async (reader) => {
    const [gone] = await reader.page.evaluate<{ name: string }[]>(
      `fetch('/search-index.json').then((answer) => answer.json()).then((all) => all.filter(({ kind }) => kind === 'left out'))`,
    );
    await reader.type(reader.page.getByRole('searchbox'), gone!.name.split(',').slice(0, 2).join(''));
    await reader.enter();
    await reader.page
      .locator('.found .label', { hasText: /It comes back when/ })
      .first()
      .waitFor();
  },
  'from a place down to one reading': async (reader) => {
    await reader.press(first(reader));
    // Whatever the readings are folded into is opened, the outermost first.
    const readings = reader.page.locator('table', {
      has: reader.page.locator('caption', { hasText: 'Readings as they were entered' }),
    });
    const folded = reader.page.locator('details:not([open])', { has: readings });
    while (!(await readings.first().isVisible())) await reader.press(folded.first().locator('> summary'));
  },
  'the same line in another colour': async (reader) => {
    await reader.press(first(reader));
    const here = new URL(reader.page.url()).pathname;
    await reader.press(reader.page.locator('p', { hasText: 'Other sizes and colours of' }).getByRole('link').first());
    await reader.page.waitForURL((url) => url.pathname.startsWith('/variants/') && url.pathname !== here);
  },
  'what the label promises and what was measured': async (reader) => {
    await reader.press(first(reader));
    await reader.page.locator('#claims').waitFor();
    await reader.page.getByRole('columnheader', { name: 'Claimed', exact: true }).first().waitFor();
  },
  'cite this': async (reader) => {
    await reader.press(reader.page.getByRole('button', { name: 'Copy the citation' }));
    await reader.page.locator('pass-on output', { hasText: 'The citation' }).waitFor();
  },
  'how the order would be if only knots counted': async (reader) => {
    await reader.press(reader.page.getByRole('link', { name: 'weigh it yourself' }));
    await reader.choose(reader.page.getByLabel('Only one counts'), 'Knot retention');
    await reader.page.waitForURL(/knot-retention=1/);
    await status(reader, /^First: /);
  },
};

/** Ten tasks of readers, each from the front page, in no more presses than it should take. */
export function testTasks(open: (path: string) => Promise<Page>): void {
  test('ten tasks of readers take three presses from the front at most', async () => {
    const page = await open('/');
    const taken: Record<string, number> = {};
    for (const [name, task] of Object.entries(TASKS)) {
      await page.goto(new URL('/', page.url()).href);
      let presses = 0;
      /** What is done counts as one press. */
      const counting = async (done: Promise<unknown>) => {
        presses += 1;
        await done;
      };
      await task({
        page,
        // A page that was led to hears what is chosen on it once its scripts have run.
        press: (what) => counting(what.click().then(() => page.waitForLoadState())),
        choose: (what, label) => counting(what.selectOption({ label })),
        type: (what, text) => counting(what.fill(text)),
        enter: () => counting(page.keyboard.press('Enter')),
      });
      taken[name] = presses;
    }
    expect(Object.keys(taken)).toHaveLength(10);
    expect(Object.entries(taken).filter(([, presses]) => presses > MOST_PRESSES)).toEqual([]);
    await page.context().close();
  });
}
