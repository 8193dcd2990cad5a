import { resolve } from 'node:path';
import { Worker } from 'node:worker_threads';
import { PICTURE } from './picture.js';
import type { Picture } from './picture.js';

const PROGRAM = 'site/src/pictures/draw-pictures.ts';

let drawing: Worker | undefined;

/** Orders a picture; it is drawn while pages are rendered. Threads that render beside the first order the same ones again, in vain. */
export const orderPicture = (picture: Picture): void => drawing?.postMessage(picture);

/** Has the ordered pictures drawn, by a thread of its own while the pages are rendered. */
export function drawPictures(folder: string): { finish: () => Promise<unknown> } {
  const worker = new Worker(resolve(PROGRAM), { workerData: { folder, size: PICTURE } });
  worker.on('error', (error) => process.stderr.write(`Not drawn: the pictures that were still to come. ${String(error)}\n`));
  const ended = new Promise((done) => worker.once('exit', done));
  drawing = worker;
  return {
    finish: () => {
      worker.postMessage(null);
      return ended;
    },
  };
}
