import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readConfig } from '../../api/config.js';
import { CSV_COLUMNS } from '../../api/submissions/intake/csv-columns.js';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const read = (name: string) => readFileSync(ROOT + name, 'utf8');
const README = read('README.md');
const DOCUMENTS = ['README.md', 'DEVELOPERS.md', 'api/measurement/README.md'];

test('the table of the configuration has every variable with its default', () => {
  const rows = [...README.matchAll(/^\| `([A-Z_]+)` \| (.+?) \| /gm)].map(([, name, otherwise]) => [name, otherwise]);
  const defaults = Object.entries({ ...readConfig({ DATABASE_URL: 'needed' }), DATABASE_URL: '' }).map(([name, value]) => [
    name,
    value === '' ? 'none' : `\`${String(value)}\``,
  ]);
  expect(Object.fromEntries(rows)).toEqual(Object.fromEntries(defaults));
});

test('the table of the hand-in file has every column as the parser knows it', () => {
  const begin = README.indexOf('## The hand-in file');
  const rows = [...README.slice(begin, README.indexOf('\n## ', begin + 1)).matchAll(/^\| `(.+?)` \| (yes|no) \| (.+?) \| (.*?) ?\|$/gm)];
  expect(rows.map(([, ...cells]) => cells)).toEqual(
    CSV_COLUMNS.map(({ name, isRequired, meaning, example }) => [
      name,
      isRequired ? 'yes' : 'no',
      meaning,
      example === '' ? '' : `\`${example}\``,
    ]),
  );
});

test.each(DOCUMENTS)('%s names only files and folders that are there', (name) => {
  const named = [...read(name).matchAll(/`((?:api|prisma|site|tests|\.config|\.ci)\/[^`\s]*)`/g)].map(([, path]) => path!);
  const linked = [...read(name).matchAll(/\]\((?!https?:)([^)#]+)\)/g)].map(([, path]) => path!);
  const missing = [...named, ...linked].filter((path) => !/[<*{]/.test(path) && !existsSync(ROOT + path));
  expect(missing).toEqual([]);
});

test('the picture of the code has every room of the API, those inside the large ones too, and features in the order of the work', () => {
  const picture = read('DEVELOPERS.md');
  const roomsOf = (folder: string) =>
    readdirSync(ROOT + folder, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => `${folder}/${name}/`);
  const rooms = ['api', 'api/reckoning', 'api/releases', 'api/submissions'].flatMap(roomsOf);
  expect(rooms.filter((room) => !picture.includes(`\`${room}`))).toEqual([]);
  const modules = [...read('api/app.module.ts').matchAll(/^import \{ (\w+) \} from '\.\/([\w-]+)\/\2\.module\.js';$/gm)];
  const folderOf = new Map(modules.map(([, name, folder]) => [name!, folder!]));
  const [, listed = ''] = /const FEATURES = \[([^\]]*)\]/.exec(read('api/app.module.ts')) ?? [];
  const inOrder = [...listed.matchAll(/(\w+),/g)].map(([, name]) => picture.indexOf(`\n| \`api/${folderOf.get(name!)}/\``));
  const firsts = inOrder.filter((place) => place >= 0);
  expect(firsts.length).toBeGreaterThan(15);
  expect(firsts).toEqual(firsts.toSorted((one, other) => one - other));
});

test('the picture of the code grows no longer', () => {
  expect(read('DEVELOPERS.md').split('\n').length).toBeLessThanOrEqual(105);
});

test.each(DOCUMENTS)('%s names only scripts that npm knows', (name) => {
  const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
  const named = [...read(name).matchAll(/npm run ([\w:-]+)/g)].map(([, script]) => script!);
  expect(named.filter((script) => !(script in scripts))).toEqual([]);
});

test('what is read first says whom it is not for, and which licence it has', () => {
  expect(README).toMatch(/no basis for lifting, climbing, towing or rescue/);
  expect(README).toMatch(/MIT licence/);
});
