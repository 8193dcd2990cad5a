/** An editor asks a tester for a spool; the tester finds it on the bench page, and reads its label with the camera. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createCanvas, loadImage } from '@napi-rs/canvas';
import encodeQR from 'qr';
import { decodeQR } from 'qr/decode.js';
import { setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import { keepBenchDay, openDesk } from '../support/desk.js';
import type { OpenDesk } from '../support/desk.js';
import { filmOf } from '../support/label-film.js';

let b: Bench;
let desk: OpenDesk;
let folder: string;
beforeAll(async () => {
  b = await setUpBench();
  folder = await mkdtemp(join(tmpdir(), 'fairpull-film-'));
  filmOf(join(folder, 'label.y4m'), encodeQR(b.spool, 'raw'));
  desk = await openDesk(b.t, join(folder, 'label.y4m'));
});
afterAll(async () => {
  expect(desk.complaints).toEqual([]);
  await desk.close();
  await b.t.close();
  await rm(folder, { recursive: true });
});

test('what is asked for stands first on the bench page, and opens the sheet of that spool and method', async () => {
  const editor = await desk.signedIn(b.editor.email, '/desk/season/?edition=2026');
  await editor.getByText('Who pulls what').click();
  await editor.getByLabel('Who', { exact: true }).selectOption(b.tester.accountId);
  await editor.getByLabel('By which method').selectOption('straight-pull');
  await editor.getByLabel('Until if there is one').fill('2026-04-01');
  await editor.getByLabel(new RegExp(b.otherSpool)).check();
  await editor.getByRole('button', { name: 'Ask for it' }).click();
  await editor.getByText(/^Asked for/).waitFor();
  const tester = await desk.signedIn(b.tester.email, '/desk/bench/');
  await keepBenchDay(tester, '2026-03-10');
  await tester.getByText('Asked of you: 1 of 1 to pull').waitFor();
  await tester.getByText('8 specimens, until 1 Apr 2026').waitFor();
  // Of a code that is typed the method that was asked for is offered; of another, none that nobody chose.
  const method = tester.getByLabel('Method', { exact: true }).last();
  await tester.getByLabel('Code on the spool').fill(b.otherSpool.toLowerCase());
  expect(await method.inputValue()).toBe('straight-pull');
  await tester.getByLabel('Code on the spool').fill(b.spool);
  expect(await method.inputValue()).toBe('');
  await tester.getByRole('button', { name: 'Begin' }).click();
  await tester.getByText('Choose the method by which it is pulled.').waitFor();
  expect(await method.evaluate((one) => one.ownerDocument.activeElement === one)).toBe(true);
  await tester.getByRole('link', { name: 'Begin' }).click();
  await tester.getByLabel('Force, specimen 1', { exact: true }).waitFor();
  await tester.getByRole('heading', { name: b.otherSpool }).waitFor();
});

test('a label carries its code to scan, and nothing else', async () => {
  const page = await desk.signedIn(b.editor.email, `/desk/catalogue/`);
  await page.goto(`${desk.url}/v1/catalogue/labels?code=${b.spool}`);
  const image = await loadImage(await page.locator('svg').screenshot());
  const canvas = createCanvas(image.width, image.height);
  const context = canvas.getContext('2d');
  context.drawImage(image, 0, 0);
  const { data } = context.getImageData(0, 0, image.width, image.height);
  expect(decodeQR({ width: image.width, height: image.height, data: new Uint8Array(data) })).toBe(b.spool);
});

test('the camera reads the label, and the sheet opens without a key', async () => {
  const page = await desk.signedIn(b.tester.email, '/desk/bench/');
  await keepBenchDay(page, '2026-03-10');
  await page.getByLabel('Method', { exact: true }).last().selectOption('straight-pull');
  await page.getByRole('button', { name: 'Scan with the camera' }).click();
  await page.waitForURL('**/desk/enter/?*');
  await page.getByRole('heading', { name: b.spool }).waitFor();
  await page.getByLabel('Force, specimen 1', { exact: true }).waitFor();
});
