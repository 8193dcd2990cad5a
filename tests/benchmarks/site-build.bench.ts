/**
 * Time and memory of the site by number of variants: compiled once, rendered for each release; beside two bare Astro builds of as many pages
 * in the same run:
 * one of pages with nothing but a heading, one of pages with a table that weighs as much as this site's page does on average.
 * npm run bench -- site-build [variants …, 60 2000 10000]
 */
import { spawn } from 'node:child_process';
import { mkdir, mkdtemp, readdir, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { makeReleases } from '../support/make-release.js';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const ASTRO = join(ROOT, 'node_modules/astro/bin/astro.mjs');
const sizes = process.argv.slice(2).map(Number);

interface Build {
  readonly seconds: number;
  readonly peakMb: number;
}

const build = (root: string, env: Record<string, string>): Promise<Build> => run([ASTRO, 'build', '--root', root], env);

/** Runs a program and watches how much memory its process takes. */
async function run(args: readonly string[], env: Record<string, string>): Promise<Build> {
  const began = performance.now();
  const child = spawn(process.execPath, args, {
    cwd: ROOT,
    env: { ...process.env, NODE_ENV: 'production', ASTRO_TELEMETRY_DISABLED: '1', ...env },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  let peakMb = 0;
  const watch = setInterval(() => {
    const [, kb = '0'] = /VmHWM:\s+(\d+)/.exec(statusOf(child.pid ?? 0)) ?? [];
    peakMb = Math.max(peakMb, Number(kb) / 1000);
  }, 100);
  const code = await new Promise((done) => child.on('close', done));
  clearInterval(watch);
  if (code !== 0) throw new Error(`${args.join(' ')} ended with code ${String(code)}.`);
  return { seconds: (performance.now() - began) / 1000, peakMb };
}

function statusOf(pid: number): string {
  try {
    return readFileSync(`/proc/${pid}/status`, 'utf8');
  } catch {
    return '';
  }
}

/** Pages of a built site and what one weighs on average; one file after the other, for there are tens of thousands. */
async function weigh(out: string): Promise<{ pages: number; meanBytes: number }> {
  const files = (await readdir(out, { recursive: true })).filter((file) => file.endsWith('.html'));
  let bytes = 0;
  for (const file of files) bytes += (await stat(join(out, file))).size;
  return { pages: files.length, meanBytes: Math.round(bytes / files.length) };
}

const ROW_BYTES = 136;

/** An Astro project of one template with a heading and a table, and so many pages; it reads nothing and knows nothing. */
async function bareProject(folder: string, pages: number, pageBytes: number): Promise<string> {
  const root = join(folder, `bare-${pageBytes}`);
  await mkdir(join(root, 'src/pages'), { recursive: true });
  await symlink(join(ROOT, 'node_modules'), join(root, 'node_modules')).catch(() => null);
  await writeFile(join(root, 'astro.config.mjs'), `export default { outDir: ${JSON.stringify(join(folder, `bare-out-${pageBytes}`))} };\n`);
  const page = `---
export const getStaticPaths = () => Array.from({ length: ${pages} }, (_, i) => ({ params: { slug: 'page-' + i } }));
const rows = Array.from({ length: ${Math.round(pageBytes / ROW_BYTES)} }, (_, i) => i);
---
<html lang="en"><head><title>{Astro.params.slug}</title></head><body><h1>{Astro.params.slug}</h1><table>{rows.map((row) => <tr role="row"><th scope="row" role="rowheader">{row}</th><td role="cell" class="num" data-label="Value">{row}</td><td role="cell">{row}</td></tr>)}</table></body></html>
`;
  await writeFile(join(root, 'src/pages/[slug].astro'), page);
  return root;
}

interface Pair {
  readonly compiled: Build;
  readonly own: Build;
  readonly asHeavy: Build;
}

const shareOf = ({ own, asHeavy }: Pair) => (100 * asHeavy.seconds) / own.seconds;
const shareOfBoth = ({ compiled, own, asHeavy }: Pair) => (100 * asHeavy.seconds) / (compiled.seconds + own.seconds);

function inTheMiddle(pairs: readonly Pair[]): Pair {
  const [pair] = pairs.toSorted((one, other) => shareOf(one) - shareOf(other)).slice(pairs.length >> 1);
  if (!pair) throw new Error('Nothing was built.');
  return pair;
}

const rows: (Pair & { variants: number; pages: number; bare: Build })[] = [];
for (const variants of sizes.length > 0 ? sizes : [60, 2000, 10_000]) {
  const folder = await mkdtemp(join(tmpdir(), 'site-build-'));
  await makeReleases(join(folder, 'api'), { editions: 1, variants });
  const out = join(folder, 'out/site');
  const program = join(folder, 'program');
  const env = { RELEASES_FOLDER: join(folder, 'api'), PUBLIC_URL: 'https://trials.example', SITE_OUT: out };
  const compile = async () => {
    await rm(program, { recursive: true, force: true });
    return build(join(ROOT, 'site'), { SITE_PROGRAM: program });
  };
  const pairOf = async (): Promise<Omit<Pair, 'asHeavy'>> => ({
    compiled: await compile(),
    own: await run([join(program, 'pages/prerender-entry.mjs')], env),
  });
  const first = await pairOf();
  const { pages, meanBytes } = await weigh(out);
  const bare = await build(await bareProject(folder, pages, 0), {});
  const heavyProject = await bareProject(folder, pages, meanBytes);
  const pairs = [{ ...first, asHeavy: await build(heavyProject, {}) }];
  // What else the machine does comes and goes: of small ones the pair in the middle.
  while (variants <= 2000 && pairs.length < 3) pairs.push({ ...(await pairOf()), asHeavy: await build(heavyProject, {}) });
  rows.push({ variants, pages, bare, ...inTheMiddle(pairs) });
  await rm(folder, { recursive: true });
  console.log(`${variants} variants, ${pages} pages of ${meanBytes} bytes`);
}

const head = ['variants', 'pages', 'compiled, s', 's', 'MB', 'bare s', 'bare, as heavy, s', 'share of its rate', 'with compiling'];
console.log(`\n| ${head.join(' | ')} |\n|${head.map(() => '---').join('|')}|`);
for (const { variants, pages, bare, ...pair } of rows) {
  const seconds = [bare, pair.asHeavy].map((build) => build.seconds.toFixed(1));
  const shares = [shareOf(pair), shareOfBoth(pair)].map((share) => `${share.toFixed(0)} %`);
  const own = [pair.compiled.seconds.toFixed(1), pair.own.seconds.toFixed(1), pair.own.peakMb.toFixed(0)];
  console.log(`| ${[variants, pages, ...own, ...seconds, ...shares].join(' | ')} |`);
}
const [first, last] = [rows[0], rows.at(-1)];
if (first && last && first !== last) {
  const exponent = Math.log(last.own.seconds / first.own.seconds) / Math.log(last.pages / first.pages);
  console.log(`\nExponent of the time by pages, ${first.pages} to ${last.pages}: ${exponent.toFixed(2)}`);
}
