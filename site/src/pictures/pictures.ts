import type { AstroIntegration } from 'astro';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { ordered, PICTURE } from './picture.js';

/** Has the ordered pictures drawn by a thread of its own while the pages are rendered; the build ends when both are done. */
export function pictures(): AstroIntegration {
  let folder = '';
  let finish: () => Promise<unknown>;
  return {
    name: 'pictures',
    hooks: {
      'astro:config:done': ({ config }) => {
        folder = fileURLToPath(config.outDir);
      },
      'astro:build:start': () => {
        const worker = new Worker(new URL('draw-pictures.ts', import.meta.url), { workerData: { folder, size: PICTURE } });
        worker.on('error', (error) => process.stderr.write(`Not drawn: the pictures that were still to come. ${String(error)}\n`));
        const ended = new Promise((done) => worker.once('exit', done));
        ordered.subscribe((picture) => worker.postMessage(picture));
        finish = () => {
          worker.postMessage(null);
          return ended;
        };
      },
      'astro:build:done': async () => {
        await finish();
      },
    },
  };
}
