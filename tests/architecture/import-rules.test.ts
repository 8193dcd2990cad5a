import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';

/** One import that the named rule must refuse, and one beside it that it must let pass. */
interface Case {
  readonly rule: string;
  readonly from: string;
  readonly unlawful: string;
  readonly lawful: string;
}

const CASES: readonly Case[] = [
  {
    rule: 'measurement-stands-alone',
    from: 'api/measurement/summary/a.ts',
    unlawful: 'api/checks/check.ts',
    lawful: 'api/measurement/errors.ts',
  },
  { rule: 'measurement-stands-alone', from: 'api/measurement/summary/b.ts', unlawful: 'node:fs', lawful: 'decimal.js' },
  { rule: 'measurement-stands-alone', from: 'api/measurement/summary/c.ts', unlawful: '@nestjs/common', lawful: 'decimal.js' },
  {
    rule: 'tables-behind-stores-and-read-models',
    from: 'api/editions/open-edition.ts',
    unlawful: '@prisma/client',
    lawful: 'api/editions/editions.store.ts',
  },
  {
    rule: 'tables-behind-stores-and-read-models',
    from: 'api/editions/close-edition.ts',
    unlawful: 'api/platform/database/generated/client.ts',
    lawful: 'api/platform/database/database.ts',
  },
  {
    rule: 'stories-know-no-caller',
    from: 'api/editions/publish-edition.ts',
    unlawful: 'api/editions/editions.controller.ts',
    lawful: 'api/editions/editions.store.ts',
  },
  {
    rule: 'stories-know-no-caller',
    from: 'api/editions/edition.ts',
    unlawful: 'api/editions/compute-standings.job.ts',
    lawful: 'api/measurement/errors.ts',
  },
  {
    rule: 'record-knows-no-feature',
    from: 'api/audit/superseded.store.ts',
    unlawful: 'api/submissions/submissions.read-model.ts',
    lawful: 'api/platform/clock/clock.ts',
  },
  {
    rule: 'controllers-change-nothing',
    from: 'api/editions/editions.controller.ts',
    unlawful: 'api/platform/database/database.ts',
    lawful: 'api/editions/open-edition.ts',
  },
  {
    rule: 'controllers-change-nothing',
    from: 'api/editions/schemes.controller.ts',
    unlawful: 'api/editions/editions.store.ts',
    lawful: 'api/editions/editions.read-model.ts',
  },
  {
    rule: 'public-pages-read-releases-only',
    from: 'api/public-api/standings.controller.ts',
    unlawful: 'api/editions/editions.read-model.ts',
    lawful: 'api/releases/releases.read-model.ts',
  },
  {
    rule: 'contract-runs-anywhere',
    from: 'api/contract/endpoints/a.ts',
    unlawful: 'api/readings/read-force.ts',
    lawful: 'api/measurement/units/find-unit.ts',
  },
  {
    rule: 'contract-runs-anywhere',
    from: 'api/contract/endpoints/b.ts',
    unlawful: 'node:crypto',
    lawful: 'api/contract/roles.ts',
  },
  {
    rule: 'contract-runs-anywhere',
    from: 'api/contract/endpoints/c.ts',
    unlawful: 'api/measurement/ranking/places/standings.ts',
    lawful: 'api/measurement/errors.ts',
  },
  {
    rule: 'readings-know-no-feature',
    from: 'api/readings/a.ts',
    unlawful: 'api/reckoning/canonical-json.ts',
    lawful: 'api/measurement/errors.ts',
  },
  {
    rule: 'readings-know-no-feature',
    from: 'api/readings/b.ts',
    unlawful: 'api/platform/database/database.ts',
    lawful: 'api/platform/errors/problem.ts',
  },
  {
    rule: 'checks-judge-what-they-are-given',
    from: 'api/checks/list/grip-breaks.ts',
    unlawful: 'api/submissions/submissions.read-model.ts',
    lawful: 'api/checks/check.ts',
  },
  {
    rule: 'checks-judge-what-they-are-given',
    from: 'api/checks/list/unit-slip.ts',
    unlawful: 'api/reckoning/canonical-json.ts',
    lawful: 'api/readings/read-force.ts',
  },
  {
    rule: 'reckoning-computes-from-inputs',
    from: 'api/reckoning/results/a.ts',
    unlawful: 'api/editions/editions.read-model.ts',
    lawful: 'api/readings/read-force.ts',
  },
  {
    rule: 'reckoning-computes-from-inputs',
    from: 'api/reckoning/results/b.ts',
    unlawful: 'node:fs',
    lawful: 'decimal.js',
  },
  {
    rule: 'reckoning-computes-from-inputs',
    from: 'api/reckoning/results/c.ts',
    unlawful: 'api/platform/clock/clock.ts',
    lawful: 'api/platform/identifiers/identifiers.ts',
  },
  {
    rule: 'features-meet-at-read-models',
    from: 'api/reviews/accept-submission.ts',
    unlawful: 'api/submissions/traces/traces.store.ts',
    lawful: 'api/submissions/submissions.read-model.ts',
  },
  {
    rule: 'features-meet-at-read-models',
    from: 'api/reviews/refuse-submission.ts',
    unlawful: 'api/submissions/submission.ts',
    lawful: 'api/submissions/submissions.store.ts',
  },
  {
    rule: 'features-meet-at-read-models',
    from: 'api/reviews/reviews.module.ts',
    unlawful: 'api/catalogue/catalogue.store.ts',
    lawful: 'api/catalogue/catalogue.module.ts',
  },
  {
    rule: 'platform-knows-no-feature',
    from: 'api/platform/http/guard.ts',
    unlawful: 'api/editions/editions.read-model.ts',
    lawful: 'api/contract/roles.ts',
  },
  {
    rule: 'platform-knows-no-feature',
    from: 'api/platform/http/words.ts',
    unlawful: 'api/contract/claims.ts',
    lawful: 'api/contract/problem.ts',
  },
  {
    rule: 'site-speaks-http',
    from: 'site/src/release/load-release.ts',
    unlawful: 'api/releases/releases.read-model.ts',
    lawful: 'api/contract/documents/trace.ts',
  },
  {
    rule: 'site-speaks-http',
    from: 'site/src/charts/intervals.ts',
    unlawful: 'api/measurement/errors.ts',
    lawful: 'site/src/format/number.ts',
  },
  {
    rule: 'own-weights-take-the-core-alone',
    from: 'site/src/weigh/stand.ts',
    unlawful: 'api/reckoning/cells.ts',
    lawful: 'api/measurement/errors.ts',
  },
  { rule: 'site-computes-nothing', from: 'site/src/charts/density.ts', unlawful: 'decimal.js', lawful: 'site/src/format/number.ts' },
  {
    rule: 'site-and-desk-meet-in-the-look',
    from: 'site/desk/src/parts/theme.ts',
    unlawful: 'site/src/format/number.ts',
    lawful: 'site/look/theme.ts',
  },
  { rule: 'site-and-desk-meet-in-the-look', from: 'site/look/units.ts', unlawful: 'site/desk/src/theme.ts', lawful: 'site/look/theme.ts' },
  { rule: 'program-knows-no-test', from: 'api/clock.ts', unlawful: 'tests/support/fake-clock.ts', lawful: 'api/config.ts' },
  { rule: 'program-needs-no-development-package', from: 'api/create-app.ts', unlawful: 'jest', lawful: '@nestjs/common' },
  { rule: 'no-cycle', from: 'api/editions/category.ts', unlawful: 'api/editions/cycle.ts', lawful: 'api/measurement/errors.ts' },
  {
    rule: 'names-say-what',
    from: 'api/editions/ranks.ts',
    unlawful: 'api/editions/editions.service.ts',
    lawful: 'api/editions/editions.store.ts',
  },
  {
    rule: 'names-say-what',
    from: 'api/editions/ties.ts',
    unlawful: 'api/editions/utils/round.ts',
    lawful: 'api/editions/editions.store.ts',
  },
  { rule: 'imports-lead-somewhere', from: 'api/editions/scores.ts', unlawful: './nowhere.js', lawful: 'api/measurement/errors.ts' },
];

const CONFIG = resolve('.config/dependency-cruiser.cjs');
const PACKAGES = ['@nestjs/common', '@prisma/client', 'decimal.js', 'jest'];
let tree: string;
let refused: Set<string>;

const isPath = (target: string) => /^(api|site|tests)\//.test(target);

/** A file that imports each target; targets inside the tree are made too. */
function write(from: string, targets: readonly string[]): void {
  const up = '../'.repeat(from.split('/').length - 1);
  const specifiers = targets.map((target) => (isPath(target) ? `${up}${target.replace(/\.ts$/, '.js')}` : target));
  const file = join(tree, from);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, `${specifiers.map((specifier) => `import '${specifier}';`).join('\n')}\nexport {};\n`);
}

beforeAll(() => {
  tree = mkdtempSync(join(tmpdir(), 'fairpull-imports-'));
  for (const name of PACKAGES) {
    mkdirSync(join(tree, 'node_modules', name), { recursive: true });
    writeFileSync(join(tree, 'node_modules', name, 'package.json'), JSON.stringify({ name, version: '1.0.0', main: 'index.js' }));
    writeFileSync(join(tree, 'node_modules', name, 'index.js'), '');
  }
  const asVersions = (names: readonly string[]) => Object.fromEntries(names.map((name) => [name, '1.0.0']));
  const manifest = { name: 'tree', type: 'module', dependencies: asVersions(PACKAGES.slice(0, -1)), devDependencies: asVersions(['jest']) };
  writeFileSync(join(tree, 'package.json'), JSON.stringify(manifest));
  for (const target of new Set(CASES.flatMap(({ unlawful, lawful }) => [unlawful, lawful]).filter(isPath))) write(target, []);
  for (const { from, unlawful, lawful } of CASES) write(from, [unlawful, lawful]);
  write('api/editions/cycle.ts', ['api/editions/category.ts']);
  refused = cruise();
});

afterAll(() => {
  rmSync(tree, { recursive: true });
});

/** Every refusal as "rule: from → to". */
function cruise(): Set<string> {
  const program = resolve('node_modules/dependency-cruiser/bin/dependency-cruiser.mjs');
  const args = [program, '--config', CONFIG, '--output-type', 'json', 'api', 'site', 'tests'];
  const output = execFileSync(process.execPath, args, { cwd: tree, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 });
  const { summary } = JSON.parse(output) as { summary: { violations: { from: string; to: string; rule: { name: string } }[] } };
  return new Set(summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`));
}

const found = (target: string) => {
  if (isPath(target) || target.startsWith('.')) return target;
  return target.startsWith('node:') ? target.slice('node:'.length) : `node_modules/${target}/index.js`;
};

test.each(CASES)('$rule refuses $from → $unlawful and lets $lawful pass', ({ rule, from, unlawful, lawful }) => {
  expect([...refused]).toContain(`${rule}: ${from} → ${found(unlawful)}`);
  expect([...refused].filter((line) => line.endsWith(`${from} → ${found(lawful)}`))).toEqual([]);
});

test('every rule has its case', () => {
  const { forbidden } = createRequire(import.meta.url)(CONFIG) as { forbidden: { name: string }[] };
  expect([...new Set(CASES.map(({ rule }) => rule))].sort()).toEqual(forbidden.map(({ name }) => name).sort());
});
