/**
 * What a release costs by the number of its variants: computing every file, looking at it by the standing checks, its size; each size in a process of its own.
 * Entries stand in divisions of sixty. `600x30` has 29 editions of as many entries before it.
 * npm run bench -- sizes [variants or variants x editions …, 60 600 6000]
 */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { CategoryDocument, EditionDocument, VariantDocument } from '../../api/contract/documents/release-documents.js';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { canonicalJson } from '../../api/reckoning/canonical-json.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import { earlierFrom, RETOLD } from '../../api/reckoning/documents/retold.js';
import type { Retold } from '../../api/reckoning/documents/retold.js';
import { manifestOf } from '../../api/reckoning/release-files.js';
import type { PublishedEdition } from '../../api/releases/standing-checks/published-edition.js';
import { STANDING_CHECKS } from '../../api/releases/standing-checks/standing-check-list.js';
import type { ReleaseInputs } from '../../api/reckoning/release-inputs.js';
import { inventInputs } from '../support/invent-inputs.js';

const ONE = '--one';

interface Cost {
  readonly variants: number;
  readonly editions: number;
  /** Processor time. */
  readonly computeS: number;
  readonly checksS: number;
  readonly editionMb: number;
  readonly bundleMb: number;
  readonly allMb: number;
  readonly peakMb: number;
}

const [first = '', ...others] = process.argv.slice(2);
if (first === ONE) console.log(JSON.stringify(costOf(others[0] ?? '')));
else report([first, ...others].filter(Boolean));

function report(asked: readonly string[]): void {
  const sizes = asked.length > 0 ? asked : ['60', '600', '6000'];
  console.log(
    '| variants | editions | computing, s | power | standing checks, s | power | edition.json, MB | bundle.json, MB | all files, MB | peak MB |\n|---|---|---|---|---|---|---|---|---|---|',
  );
  let before: Cost | undefined;
  for (const size of sizes) {
    const args = [...process.execArgv, fileURLToPath(import.meta.url), ONE, size];
    const cost = JSON.parse(execFileSync(process.execPath, args, { encoding: 'utf8' })) as Cost;
    const power = (of: 'computeS' | 'checksS') =>
      before && before.variants !== cost.variants
        ? (Math.log(cost[of] / before[of]) / Math.log(cost.variants / before.variants)).toFixed(2)
        : '–';
    const cells = [cost.variants, cost.editions, cost.computeS.toFixed(2), power('computeS'), cost.checksS.toFixed(2), power('checksS')];
    const megabytes = [cost.editionMb, cost.bundleMb].map((mb) => mb.toFixed(2));
    console.log(`| ${[...cells, ...megabytes, cost.allMb.toFixed(1), cost.peakMb.toFixed(0)].join(' | ')} |`);
    before = cost;
  }
}

function costOf(size: string): Cost {
  const [variants = 60, editions = 1] = size.split('x').map(Number);
  const inputs = after(editions - 1, inDivisionsOf(60, inventInputs(7, { variants, testers: 5, rigs: 3, specimens: 5 })));
  const [files, computeS] = timed(() => computeRelease(inputs));
  const published = asPublished(inputs, files);
  const told = new Map(
    inputs.earlier.map(({ edition, history }) => [`${edition}/1`, new Map(history.map(({ variant, point }) => [variant, point]))]),
  );
  const [faults, checksS] = timed(() => STANDING_CHECKS.flatMap(({ run }) => run(published, told)));
  if (faults.length > 0) throw new Error(`The release does not stand: ${JSON.stringify(faults[0])}`);
  const mb = (contents: readonly { content: string }[]) => contents.reduce((sum, { content }) => sum + Buffer.byteLength(content), 0) / 1e6;
  const mbOf = (name: string) => mb(files.filter(({ path }) => path === name));
  const [editionMb, bundleMb] = [mbOf('documents/edition.json'), mbOf('bundle.json')];
  return { variants, editions, computeS, checksS, editionMb, bundleMb, allMb: mb(files), peakMb: process.resourceUsage().maxRSS / 1000 };
}

/** So many editions of the same entries went before, each as the release itself would be told again by later ones. */
function after(earlier: number, inputs: ReleaseInputs): ReleaseInputs {
  if (earlier === 0) return inputs;
  const retold = JSON.parse(computeRelease(inputs).find(({ path }) => path === RETOLD)?.content ?? '') as Retold;
  const digest = sha256('');
  const told = Array.from({ length: earlier }, (_, i) => {
    const edition = `before-${i + 1}`;
    const history = retold.history.map(({ variant, point }) => ({ variant, point: { ...point, edition } }));
    return earlierFrom({ ...retold, history }, { edition, revision: 1, digest }, i === 0);
  });
  return { ...inputs, earlier: told };
}

/** The same entries in the order of their slugs, so many to a division. */
function inDivisionsOf(entries: number, inputs: ReturnType<typeof inventInputs>): ReleaseInputs {
  const { scheme, ...edition } = inputs.evidence.edition;
  const slugs = inputs.variants.map(({ slug }) => slug);
  const divisions = Array.from({ length: Math.ceil(slugs.length / entries) }, (_, i) => ({
    slug: `division-${i + 1}`,
    name: `Division ${i + 1}`,
    takes: { materials: [], constructions: [] },
    scheme,
    variants: slugs.slice(i * entries, (i + 1) * entries),
    overruled: [],
  }));
  return divisions.length < 2 ? inputs : { ...inputs, evidence: { ...inputs.evidence, edition: { ...edition, divisions } } };
}

function timed<Answer>(work: () => Answer): readonly [Answer, number] {
  const before = process.cpuUsage();
  const answer = work();
  const { user, system } = process.cpuUsage(before);
  return [answer, (user + system) / 1e6];
}

function asPublished(inputs: ReleaseInputs, list: ReturnType<typeof computeRelease>): PublishedEdition[] {
  const { revision, publishedAt, softwareVersion, previousDigest } = inputs;
  const manifest = manifestOf(list, { edition: '2026', revision, publishedAt, softwareVersion, previousDigest });
  const files = new Map(list.map(({ path, content }) => [path, content]));
  const read = (path: string): unknown => JSON.parse(files.get(path) ?? 'null');
  const folder = (prefix: string): unknown[] => [...files.keys()].filter((path) => path.startsWith(prefix)).map(read);
  const variants = folder('documents/variants/') as VariantDocument[];
  const divisions = inputs.evidence.edition.divisions?.map(({ slug }) => slug) ?? [undefined];
  const common = {
    name: '2026/1',
    manifest,
    manifestText: canonicalJson(manifest),
    digest: sha256(canonicalJson(manifest)),
    isCurrent: true,
    files,
    digests: new Map(manifest.files.map(({ path, sha256: digest }) => [path, digest])),
    bundle: read('bundle.json') as PublishedEdition['bundle'],
  };
  return divisions.map((division) => {
    const own = division === undefined ? 'documents' : `documents/divisions/${division}`;
    return {
      ...common,
      edition: read(`${own}/edition.json`) as EditionDocument,
      categories: folder(`${own}/standings/`) as CategoryDocument[],
      variants: variants.filter((variant) => variant.division?.slug === division),
    };
  });
}
