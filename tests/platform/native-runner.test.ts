/** What runs the tests is tested with files that must fail: a runner that calls everything green would be believed. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const FILES = {
  'a.test.mjs': `
    beforeAll(() => { process.env.LEFT = '1'; jest.spyOn(Math, 'max').mockReturnValue(42); });
    test('is wrong', () => { expect(1).toBe(2); });
    test('hangs', () => new Promise(() => undefined), 200);
    test('throws later', async () => { void Promise.reject(new Error('later')); await new Promise((done) => setTimeout(done, 20)); });
    describe('below', () => { beforeAll(() => { throw new Error('hook'); }); test('a broken hook', () => undefined); });
    test('is right', () => undefined);`,
  'b.test.mjs': `
    test('what another file left is gone', () => { expect([process.env.LEFT, Math.max(1, 2)]).toEqual([undefined, 2]); });`,
  'c.test.mjs': `throw new Error('does not load');`,
  'd.test.mjs': '',
};

interface Report {
  readonly success: boolean;
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly assertionResults: readonly { readonly title: string; readonly status: string }[];
  }[];
}

test('what fails, hangs, throws later, hooks wrongly or does not load is red, and nothing passes to the next file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fairpull-runner-'));
  try {
    for (const [name, text] of Object.entries(FILES)) writeFileSync(join(folder, name), text);
    const config = {
      rootDir: folder,
      testMatch: ['**/*.test.mjs'],
      testEnvironment: resolve('tests/support/native-environment.mjs'),
      testRunner: resolve('tests/support/native-runner.mjs'),
      transform: {},
      watchman: false,
    };
    const program = resolve('node_modules/jest/bin/jest.js');
    const run = spawnSync(process.execPath, [program, '--config', JSON.stringify(config), '--runInBand', '--json'], { encoding: 'utf8' });
    const { success, testResults } = JSON.parse(run.stdout) as Report;
    const told = testResults.map(({ name, status, assertionResults }) => [
      name.slice(-'a.test.mjs'.length),
      [status, ...assertionResults.map((one) => `${one.title}: ${one.status}`)],
    ]);
    expect(Object.fromEntries(told)).toEqual({
      'a.test.mjs': ['failed', 'is wrong: failed', 'hangs: failed', 'throws later: failed', 'a broken hook: failed', 'is right: passed'],
      'b.test.mjs': ['passed', 'what another file left is gone: passed'],
      'c.test.mjs': ['failed'],
      'd.test.mjs': ['failed'],
    });
    expect([success, run.status]).toEqual([false, 1]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
