/**
 * What a release costs by the number of its variants: computing every file, looking at it by the standing checks, its size; each size in a process of its own.
 * npm run bench -- sizes [variants …, 60 240 960]
 */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { CategoryDocument, EditionDocument, VariantDocument } from '../../api/contract/documents/release-documents.js';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { canonicalJson } from '../../api/reckoning/canonical-json.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import { manifestOf } from '../../api/reckoning/release-files.js';
import type { PublishedEdition } from '../../api/releases/standing-checks/published-edition.js';
import { STANDING_CHECKS } from '../../api/releases/standing-checks/standing-check-list.js';
import { inventInputs } from '../support/invent-inputs.js';

const ONE = '--one';

interface Cost {
  readonly variants: number;
  /** Processor time. */
  readonly computeS: number;
  readonly checksS: number;
  readonly editionMb: number;
  readonly allMb: number;
  readonly peakMb: number;
}

const [first = '', ...others] = process.argv.slice(2);
if (first === ONE) console.log(JSON.stringify(costOf(Number(others[0]))));
else report([first, ...others].filter(Boolean).map(Number));

function report(asked: readonly number[]): void {
  const sizes = asked.length > 0 ? asked : [60, 240, 960];
  console.log(
    '| variants | computing, s | power | standing checks, s | power | edition.json, MB | all files, MB | peak MB |\n|---|---|---|---|---|---|---|---|',
  );
  let before: Cost | undefined;
  for (const variants of sizes) {
    const args = [...process.execArgv, fileURLToPath(import.meta.url), ONE, String(variants)];
    const cost = JSON.parse(execFileSync(process.execPath, args, { encoding: 'utf8' })) as Cost;
    const power = (of: 'computeS' | 'checksS') =>
      before ? (Math.log(cost[of] / before[of]) / Math.log(variants / before.variants)).toFixed(2) : '–';
    const cells = [variants, cost.computeS.toFixed(2), power('computeS'), cost.checksS.toFixed(2), power('checksS')];
    console.log(`| ${[...cells, cost.editionMb.toFixed(2), cost.allMb.toFixed(1), cost.peakMb.toFixed(0)].join(' | ')} |`);
    before = cost;
  }
}

function costOf(variants: number): Cost {
  const inputs = inventInputs(7, { variants, testers: 5, rigs: 3, specimens: 5 });
  const [files, computeS] = timed(() => computeRelease(inputs));
  const release = asPublished(inputs, files);
  const [faults, checksS] = timed(() => STANDING_CHECKS.flatMap(({ run }) => run([release])));
  if (faults.length > 0) throw new Error(`The release does not stand: ${JSON.stringify(faults[0])}`);
  const mb = (contents: readonly { content: string }[]) => contents.reduce((sum, { content }) => sum + Buffer.byteLength(content), 0) / 1e6;
  const editionMb = mb(files.filter(({ path }) => path === 'documents/edition.json'));
  return { variants, computeS, checksS, editionMb, allMb: mb(files), peakMb: process.resourceUsage().maxRSS / 1000 };
}

function timed<Answer>(work: () => Answer): readonly [Answer, number] {
  const before = process.cpuUsage();
  const answer = work();
  const { user, system } = process.cpuUsage(before);
  return [answer, (user + system) / 1e6];
}

function asPublished(inputs: ReturnType<typeof inventInputs>, list: ReturnType<typeof computeRelease>): PublishedEdition {
  const { revision, publishedAt, softwareVersion, previousDigest } = inputs;
  const manifest = manifestOf(list, { edition: '2026', revision, publishedAt, softwareVersion, previousDigest });
  const files = new Map(list.map(({ path, content }) => [path, content]));
  const read = (path: string): unknown => JSON.parse(files.get(path) ?? 'null');
  const folder = (prefix: string): unknown[] => [...files.keys()].filter((path) => path.startsWith(prefix)).map(read);
  return {
    name: '2026/1',
    manifest,
    manifestText: canonicalJson(manifest),
    digest: sha256(canonicalJson(manifest)),
    isCurrent: true,
    files,
    digests: new Map(manifest.files.map(({ path, sha256: digest }) => [path, digest])),
    edition: read('documents/edition.json') as EditionDocument,
    categories: folder('documents/standings/') as CategoryDocument[],
    variants: folder('documents/variants/') as VariantDocument[],
    bundle: read('bundle.json') as PublishedEdition['bundle'],
  };
}
