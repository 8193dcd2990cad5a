/**
 * Renders the site of the releases that lie where it is told. Compiled together with all pages, it is a program by itself that needs neither
 * compiler nor packages: `node prerender-entry.mjs`, with its settings in the environment.
 */
import { cp } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { dirname, join } from 'node:path';
import { isMainThread, Worker, workerData } from 'node:worker_threads';
import { ownPages } from '../languages/own-pages.js';
import { drawPictures } from '../pictures/pictures.js';
import { nameSamePages } from '../release/same-pages.js';
import { allPages, isPage, renderPage, tellAddress } from './render-page.js';
import type { RenderedPage } from './render-page.js';
import { writeSitemap } from './sitemap.js';

const { BASE_URL } = import.meta.env;
const { PUBLIC_URL, SITE_OUT, HOUSE_TEXTS = '', RENDER_THREADS } = process.env;
/** Each thread takes a second to load, which is lost on a few pages, and holds its documents for itself: four have taken 1.9 GB, two 1.3. */
const [MOST_THREADS, PAGES_OF_A_THREAD] = [2, 250];
/** Pages that a thread is at, so that it renders one while another is written. */
const AT_ONCE = 8;

if (!PUBLIC_URL || !SITE_OUT)
  throw new Error('Set PUBLIC_URL to the address under which the site is read, and SITE_OUT to the folder that it goes to.');
const [program, out] = [process.argv[1] ?? '', SITE_OUT];
tellAddress(PUBLIC_URL);

/** Renders, of all pages, each that no other thread has begun. @param begun how many have been */
async function renderShare(pages: readonly RenderedPage[], begun: Int32Array): Promise<void> {
  const next = () => pages[Atomics.add(begun, 0, 1)];
  const renderOneByOne = async () => {
    for (let page = next(); page; page = next()) await renderPage(page, out);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, renderOneByOne));
}

function renderInThread(begun: Int32Array): Promise<void> {
  const thread = new Worker(program, { workerData: begun });
  return new Promise((done, fail) => thread.on('error', fail).on('exit', () => done()));
}

async function renderAll(): Promise<void> {
  await cp(join(dirname(program), '../client'), out, { recursive: true });
  const pictures = drawPictures(out);
  const pages = await allPages();
  const shares = Math.ceil(pages.length / PAGES_OF_A_THREAD);
  const threads = RENDER_THREADS ? Number(RENDER_THREADS) : Math.min(availableParallelism(), MOST_THREADS, shares);
  const begun = new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT));
  const others = Array.from({ length: threads - 1 }, () => renderInThread(begun));
  await Promise.all([renderShare(pages, begun), ...others]);
  await nameSamePages(out);
  const paths = pages.filter(isPage).map(({ path }) => path);
  await writeSitemap(out, new URL(BASE_URL, PUBLIC_URL), paths);
  requireOwnPages(paths);
  await pictures.finish();
}

/** A page that the house has written stands in place of one of the site's. */
function requireOwnPages(paths: readonly string[]): void {
  const astray = ownPages(HOUSE_TEXTS).filter((path) => !paths.includes(path));
  if (astray.length === 0) return;
  throw new Error(`The site has no page ${astray.join(', no page ')}. Take it out of HOUSE_TEXTS, or write it as the site has it.`);
}

await (isMainThread ? renderAll() : renderShare(await allPages(), workerData as Int32Array));
