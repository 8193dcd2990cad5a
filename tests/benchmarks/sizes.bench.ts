/**
 * What a release costs by the number of its variants: computing and writing every file, looking at it by the standing checks, verifying it, its size; each step in
 * a process of its own. Entries stand in divisions of sixty. `600x30` has 29 editions of as many entries before it.
 * npm run bench -- sizes [variants or variants x editions …, 60 600 6000]
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Manifest } from '../../api/contract/documents/release-documents.js';
import { readConfig } from '../../api/config.js';
import { FileStore } from '../../api/platform/file-store/file-store.js';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { earlierFrom, RETOLD } from '../../api/reckoning/documents/retold.js';
import type { Retold } from '../../api/reckoning/documents/retold.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import { filesOf } from '../../api/reckoning/sealed-files.js';
import { whole } from '../../api/reckoning/release-files.js';
import { BuildRelease } from '../../api/releases/publication/build-release.js';
import type { GatherRelease } from '../../api/releases/publication/gather-release.js';
import { releaseFolder } from '../../api/releases/releases.read-model.js';
import type { PublishedRelease, ReleasesReadModel } from '../../api/releases/releases.read-model.js';
import { RunStandingChecks } from '../../api/releases/standing-checks/run-standing-checks.js';
import { releasesAt } from '../../api/releases/verify/release-source.js';
import { verifyRelease } from '../../api/releases/verify/verify-release.js';
import { inDivisionsOf } from '../support/in-divisions.js';
import { inventInputs } from '../support/invent-inputs.js';

interface Cost {
  /** Of processor time, all threads. */
  readonly seconds: number;
  readonly peakMb: number;
}

function report(asked: readonly string[]): void {
  console.log(
    '| variants | editions | computing and writing, s | power | peak, MB | standing checks, s | peak, MB | verifying, s | peak, MB | edition.json, MB | bundle.json, MB | all files, MB |\n|---|---|---|---|---|---|---|---|---|---|---|---|',
  );
  let last: { readonly variants: number; readonly seconds: number } | undefined;
  for (const size of asked.length > 0 ? asked : ['60', '600', '6000']) {
    const folder = mkdtempSync(join(tmpdir(), 'fairpull-sizes-'));
    const run = (name: string): Cost => {
      const args = [...process.execArgv, fileURLToPath(import.meta.url), name, size, folder];
      return JSON.parse(execFileSync(process.execPath, args, { encoding: 'utf8' })) as Cost;
    };
    try {
      const [variants, editions] = parsed(size);
      if (editions > 1) run('retell');
      const built = run('build');
      const costs = [built, run('check'), run('verify')].map(({ seconds, peakMb }) => [seconds.toFixed(2), peakMb.toFixed(0)]);
      const power =
        last && last.variants !== variants ? (Math.log(built.seconds / last.seconds) / Math.log(variants / last.variants)).toFixed(2) : '–';
      const [[seconds, peak], ...rest] = costs as [string[], ...string[][]];
      console.log(`| ${[variants, editions, seconds, power, peak, ...rest.flat(), ...sizesIn(folder)].join(' | ')} |`);
      last = { variants, seconds: built.seconds };
    } finally {
      rmSync(folder, { recursive: true });
    }
  }
}

function sizesIn(folder: string): string[] {
  const { files } = builtIn(folder).manifest;
  const mb = (some: Manifest['files']) => (some.reduce((sum, { sizeBytes }) => sum + sizeBytes, 0) / 1e6).toFixed(2);
  return [...['documents/edition.json', 'bundle.json'].map((name) => mb(files.filter(({ path }) => path === name))), mb(files)];
}

function parsed(size: string): readonly [variants: number, editions: number] {
  const [variants = 60, editions = 1] = size.split('x').map(Number);
  return [variants, editions];
}

const config = (folder: string) => ({ ...readConfig({ DATABASE_URL: 'postgresql://nobody@127.0.0.1/none' }), DATA_FOLDER: folder });
const inputsOf = (size: string): ReleaseInputs =>
  inDivisionsOf(60, inventInputs(7, { variants: parsed(size)[0], testers: 5, rigs: 3, specimens: 5 }));

/** Each edition before is as the release itself would be told again by later ones. */
async function retell(size: string, folder: string): Promise<void> {
  for (const file of filesOf(inputsOf(size))) if (file.path === RETOLD) writeFileSync(join(folder, RETOLD), whole(file).content);
}

async function build(size: string, folder: string): Promise<void> {
  const inputs = after(parsed(size)[1] - 1, folder, inputsOf(size));
  const gather = { run: () => Promise.resolve(inputs) } as unknown as GatherRelease;
  const asked = { id: 'one', edition: '2026', revision: 1, erratum: null };
  const { manifest } = await new BuildRelease(gather, new FileStore(config(folder))).run(asked, new Date(inputs.publishedAt));
  writeFileSync(join(folder, 'manifest.json'), manifest);
}

function after(earlier: number, folder: string, inputs: ReleaseInputs): ReleaseInputs {
  if (earlier === 0) return inputs;
  const retold = JSON.parse(readFileSync(join(folder, RETOLD), 'utf8')) as Retold;
  const told = Array.from({ length: earlier }, (_, i) => {
    const edition = `before-${i + 1}`;
    const history = retold.history.map(({ variant, point }) => ({ variant, point: { ...point, edition } }));
    return earlierFrom({ ...retold, history }, { edition, revision: 1, digest: sha256('') }, i);
  });
  return { ...inputs, earlier: told };
}

function builtIn(folder: string): PublishedRelease {
  const manifestBytes = readFileSync(join(folder, 'manifest.json'), 'utf8');
  const manifest = JSON.parse(manifestBytes) as Manifest;
  return { edition: '2026', revision: 1, digest: sha256(manifestBytes), manifest, manifestBytes, signature: '' };
}

async function check(_: string, folder: string): Promise<void> {
  const release = builtIn(folder);
  const releases = {
    list: () => Promise.resolve([{ edition: '2026', revision: 1, status: 'published' }]),
    find: () => Promise.resolve(release),
  } as unknown as ReleasesReadModel;
  const faults = await new RunStandingChecks(releases, new FileStore(config(folder)), config(folder)).run();
  // The editions before are told again and lie nowhere.
  const other = faults.find((fault) => fault.check !== 'history-without-gaps');
  if (other) throw new Error(`The release does not stand: ${JSON.stringify(other)}`);
}

async function verify(_: string, folder: string): Promise<void> {
  const [source] = await releasesAt(join(folder, 'files', releaseFolder('2026', 1, builtIn(folder).digest)));
  const { differences = [] } = source ? await verifyRelease(source) : {};
  const other = differences.find(({ file }) => file !== 'signature.json');
  if (other) throw new Error(`The release is not as it is computed: ${JSON.stringify(other)}`);
}

const STEPS: Readonly<Record<string, (size: string, folder: string) => Promise<void>>> = {
  retell,
  build,
  check,
  verify,
};
const [first = '', ...others] = process.argv.slice(2);
const step = STEPS[first];
if (step) {
  const [size = '', folder = ''] = others;
  const before = process.cpuUsage();
  await step(size, folder);
  const { user, system } = process.cpuUsage(before);
  console.log(JSON.stringify({ seconds: (user + system) / 1e6, peakMb: process.resourceUsage().maxRSS / 1000 } satisfies Cost));
} else report([first, ...others].filter(Boolean));
