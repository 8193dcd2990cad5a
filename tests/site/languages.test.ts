import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { en } from '../../site/src/languages/en.js';
import { messagesIn } from '../../site/src/languages/messages.js';
import { messagesOfSite } from '../../site/src/languages/messages-of-site.js';
import { putWords } from '../../site/src/languages/put-words.js';
import { LANGUAGES, readWords } from '../../site/src/languages/read-words.js';
import { ledInto, samePageIn } from '../../site/src/languages/side-by-side.js';
import { figuresOfPage } from '../../site/src/words/figures.js';
import { say } from '../../site/src/words/say.js';

const slotsIn = (words: string) => new Set(words.match(/\{\w+\}|<\/?\w+>/g));

test('the words of the site stand in one file, as its sources have them (npm run words)', async () => {
  const messages = await messagesOfSite();
  expect(messages.size).toBeGreaterThan(900);
  expect(en).toEqual([...messages.keys()]);
});

test.each(Object.keys(LANGUAGES).filter((language) => language !== 'en'))(
  'every message stands in %s, with the same links and no other figures, and no more',
  async (language) => {
    const words = readWords(language, '');
    expect(Object.keys(words).toSorted()).toEqual([...en].toSorted());
    const astray = Object.entries(words).filter(([message, said]) => {
      const [own, theirs] = [slotsIn(said), slotsIn(message)];
      return [...own].some((slot) => !theirs.has(slot)) || [...theirs].some((slot) => slot.startsWith('<') && !own.has(slot));
    });
    expect(astray).toEqual([]);
  },
);

test('no message runs into a link or a name that follows it', async () => {
  const glued = [...(await messagesOfSite())].filter(([words]) => /[\p{L}\d,;:.]<\w/u.test(words));
  expect(glued).toEqual([]);
});

test('words of a page are put in the place of others, in any order, tags and what stands in them as they were', () => {
  const page =
    '---\nimport A from "./a.astro";\n---\n\n<p>\n  Of {rows.length} lines <a href={to("x")}>the first</a> is {first.name}.\n</p>\n<A label="Place" />\n<p>{isOpen && say`open since ${day}`}</p>\n';
  expect(messagesIn('a.astro', page).map(({ words }) => words)).toEqual([
    'Of {length} lines <a>the first</a> is {name}.',
    'Place',
    'open since {day}',
  ]);
  const said = putWords('a.astro', page, {
    'Of {length} lines <a>the first</a> is {name}.': '{name} ist <a>die erste</a> von {length} Schnüren.',
    Place: 'Platz',
    'open since {day}': 'seit {day} `offen`',
  });
  expect(said).toContain('<p>{first.name}{" ist "}<a href={to("x")}>{"die erste"}</a>{" von "}{rows.length}{" Schnüren."}</p>');
  expect(said).toContain('label={"Platz"}');
  expect(said).toContain('isOpen && `seit ${day} \\`offen\\``');
});

test('words within words are each their own, white space about them stays, and without other words all is as written', () => {
  const source = 'const told = say` First: ${rows.map((one) => say`place ${one.place}`).join()} `;\n';
  expect(messagesIn('a.ts', source).map(({ words }) => words)).toEqual(['First: {1}', 'place {place}']);
  expect(putWords('a.ts', source, { 'place {place}': 'Platz {place}' })).toBe(
    'const told = ` First: ${rows.map((one) => `Platz ${one.place}`).join()} `;\n',
  );
  const [place, of] = [3, 41];
  expect(say`place ${place} of ${of}`).toBe('place 3 of 41');
});

test("a house's own words stand before those of the language; what is no language or no table of words is refused in words", () => {
  const folder = mkdtempSync(join(tmpdir(), 'texts-'));
  expect(readWords('de', folder)['Find a line']).toBe('Schnur finden');
  writeFileSync(join(folder, 'words.json'), '{"Find a line": "Welche Schnur?"}');
  expect(readWords('de', folder)['Find a line']).toBe('Welche Schnur?');
  expect(readWords('en', folder)).toEqual({ 'Find a line': 'Welche Schnur?' });
  writeFileSync(join(folder, 'words.json'), '["Find a line"]');
  expect(() => readWords('en', folder)).toThrow('is no table of words; expected');
  expect(() => readWords('en', join(folder, 'nowhere'))).toThrow('where nothing is');
  expect(() => readWords('fr', '')).toThrow('SITE_LANGUAGE is fr; expected one of en, de');
  expect(readFileSync('site/src/languages/de.json', 'utf8')).not.toMatch(/: ""/);
});

test('numbers of a page stand as its language writes them, on one line with their unit; what programs read, versions and addresses stay', () => {
  const page =
    '<td data-value="98.2" aria-label="98.2 N">98.2 N (96.10 to 99.3)</td><code>7.82</code><p>6.3.2.2 at http://127.0.0.1/v1.2/ −0.5 %</p><script>x = 1.5;</script>';
  expect(figuresOfPage(page, ',')).toBe(
    '<td data-value="98.2" aria-label="98,2\u00a0N">98,2\u00a0N (96,10 to 99,3)</td><code>7.82</code><p>6.3.2.2 at http://127.0.0.1/v1.2/ −0,5\u00a0%</p><script>x = 1.5;</script>',
  );
  // A name that has a number, and a size, which is a designation as labels print it.
  expect(figuresOfPage('<a href="/" translate="no">Some licence 4.0</a> 1.5', ',')).toBe(
    '<a href="/" translate="no">Some licence 4.0</a> 1,5',
  );
  expect(figuresOfPage('<p>Kelpseam 8, PE 1.0: 1.03 PE</p>', ',')).toBe('<p>Kelpseam 8, PE 1.0: 1,03 PE</p>');
  expect(figuresOfPage('<p title="98.2 N">4 Nylon lines, 95 %</p>', '.')).toBe('<p title="98.2\u00a0N">4 Nylon lines, 95\u00a0%</p>');
});

test('what a page of a second language points to stands in its language; what all share, links that name a language, and words do not move', () => {
  const page =
    '<a href="/find/?by=x">a/b</a><a hreflang="en" href="/find/">English</a><link rel="alternate" hreflang="de" href="https://trials.example/de/find/">' +
    '<a href="/v1/releases">v1</a><a href="/desk/">Desk</a><a href="/de/_astro/x.js">x</a><a href="/desks/">y</a><p>https://trials.example/find/</p>';
  expect(ledInto('/de/', page, 'https://trials.example')).toBe(
    '<a href="/de/find/?by=x">a/b</a><a hreflang="en" href="/find/">English</a><link rel="alternate" hreflang="de" href="https://trials.example/de/find/">' +
      '<a href="/v1/releases">v1</a><a href="/desk/">Desk</a><a href="/de/_astro/x.js">x</a><a href="/de/desks/">y</a><p>https://trials.example/de/find/</p>',
  );
  expect(ledInto('/', page, 'https://trials.example')).toBe(page);
  expect(ledInto('/de/', '{"id":"/lines/a/","file":"/v1/x","name":"6/8"}')).toBe('{"id":"/de/lines/a/","file":"/v1/x","name":"6/8"}');
  expect(samePageIn(['en', 'de'], '/find/')).toEqual([
    { language: 'en', name: 'English', href: '/find/' },
    { language: 'de', name: 'Deutsch', href: '/de/find/' },
  ]);
  expect(samePageIn(['de'], '/find/')).toEqual([]);
});
