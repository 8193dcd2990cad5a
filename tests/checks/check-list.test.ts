import { readdir } from 'node:fs/promises';
import { CHECKS } from '../../api/checks/check-list.js';
import { isForReviewers } from '../../api/checks/check.js';
import { severitiesOf } from '../../api/checks/check-settings.js';
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

test('a check whose code tells a direction does not show its code; none that is for reviewers alone blocks', () => {
  expect(CHECKS.filter(({ isSealed }) => isSealed).map(({ code }) => code)).toEqual(['figures/retention-above-whole']);
  // Whoever is turned away without a word could try until it passes.
  expect(CHECKS.filter((check) => isForReviewers(check) && severitiesOf(check).includes('blocks'))).toEqual([]);
});
