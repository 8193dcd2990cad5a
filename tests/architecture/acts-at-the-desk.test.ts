import { globSync, readFileSync } from 'node:fs';

const sources = (pattern: string): string =>
  globSync(pattern)
    .map((file) => readFileSync(file, 'utf8'))
    .join('\n');

/** "POST editions/{}/closure" of a verb of a controller. */
function actsOf(controller: string): string[] {
  const at = /@Controller\('v1\/?([^']*)'\)/.exec(controller)?.[1] ?? '';
  return [...controller.matchAll(/@(Post|Patch|Put|Delete)\((?:'([^']*)')?\)/g)].map(([, verb = '', own = '']) =>
    `${verb.toUpperCase()} ${[at, own].filter(Boolean).join('/')}`.replace(/:\w+/g, '{}'),
  );
}

test('nobody needs a terminal: what changes the record over HTTP is asked for by the desk too', () => {
  const acts = globSync('api/**/*.controller.ts').flatMap((file) => actsOf(readFileSync(file, 'utf8')));
  const desk = sources('site/desk/src/**/*.{ts,tsx}');
  const noun = (act: string) =>
    act
      .split(/[ /]/)
      .filter((part) => part !== '{}')
      .at(-1) ?? '';
  const isAsked = (act: string) => new RegExp(`[/'\`]${noun(act)}['\`/?]`).test(desk);
  expect(acts.length).toBeGreaterThan(90);
  expect(acts.filter((act) => !isAsked(act))).toEqual([]);
  expect(isAsked('POST catalogue/no-such-act')).toBe(false);
});
