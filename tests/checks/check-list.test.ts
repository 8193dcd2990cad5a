import { readdir } from 'node:fs/promises';
import { CHECKS } from '../../api/checks/check-list.js';
import type { Check } from '../../api/checks/check.js';

const LIST = new URL('../../api/checks/list/', import.meta.url);

test('every check that has a file is in the list, once', async () => {
  const files = await readdir(LIST);
  const modules = await Promise.all(
    files.map((file) => import(`../../api/checks/list/${file.replace(/\.ts$/, '.js')}`) as Promise<Record<string, Check>>),
  );
  const written = modules.flatMap((module) => Object.values(module));
  expect(files.length).toBeGreaterThan(20);
  expect(CHECKS).toHaveLength(written.length);
  for (const check of written) expect(CHECKS).toContain(check);
});

test('no two checks share a code', () => {
  const codes = CHECKS.map(({ code }) => code);
  expect(new Set(codes).size).toBe(codes.length);
});

test('a check that compares with the label or the spool, or tells a direction, does not show its code', () => {
  const sealed = CHECKS.filter(({ isSealed }) => isSealed).map(({ code }) => code);
  expect(sealed).toEqual([
    'date/before-its-time',
    'figures/unit-slip',
    'figures/far-from-label',
    'figures/beyond-the-fibre',
    'figures/retention-above-whole',
  ]);
});
