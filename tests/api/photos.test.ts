import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { contentFor, pulls, setUpBench } from '../support/bench.js';
import type { Bench } from '../support/bench.js';
import type { Caller } from '../support/test-application.js';

let b: Bench;
let force = 60;
let plain: Buffer;
let marked: Buffer;
beforeAll(async () => {
  b = await setUpBench();
  const picture = sharp({ create: { width: 60, height: 40, channels: 3, background: '#a33' } });
  plain = await picture.clone().png().toBuffer();
  // What a telephone writes: who made it, where it was, and that it lay on its side.
  marked = await picture
    .clone()
    .jpeg()
    .withExif({
      IFD0: { Make: 'Quayphone', ImageDescription: 'Kitchen table' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '54/1 30/1 0/1' },
    })
    .withMetadata({ orientation: 6 })
    .toBuffer();
});
afterAll(() => b.t.close());

interface Listed {
  readonly id: string;
  readonly digest: string;
  readonly isRemovable: boolean;
}
const handIn = async (): Promise<string> => {
  force += 2;
  const sent = b.tester.call('post', '/v1/submissions').send(contentFor(b.spool, { specimens: pulls(force) }));
  return ((await sent.expect(201)).body as { reference: string }).reference;
};
const send = (path: string, bytes: Buffer, type = 'image/jpeg', by: Caller = b.tester) =>
  by.call('post', path).set('Content-Type', type).send(bytes);
const of = (reference: string, query = '') => `/v1/submissions/${reference}/photos${query}`;
const kept = (digest: string) => join(b.t.dataFolder, 'files/photos', `${digest}.jpg`);

test('a picture is kept upright and without what the camera wrote into it, and lies where no public address leads', async () => {
  const reference = await handIn();
  expect((await sharp(marked).metadata()).exif?.toString('latin1')).toContain('Quayphone');
  const { body } = await send(of(reference, '?specimen=3'), marked).expect(201);
  const [{ id, digest }] = body.items as [Listed];
  expect(body.items).toMatchObject([{ shows: 'break', specimen: 3, width: 40, height: 60, isRemovable: true }]);
  const bytes = await readFile(kept(digest));
  expect(bytes.toString('latin1')).not.toMatch(/Quayphone|Kitchen|Exif|GPS/);
  expect(await sharp(bytes).metadata()).toMatchObject({ format: 'jpeg', width: 40, height: 60 });
  const seen = await b.reviewer.call('get', `/v1/photos/${id}`).buffer(true).expect(200);
  expect(seen.headers).toMatchObject({
    'content-type': 'image/jpeg',
    'cache-control': 'private, no-store',
    'x-content-type-options': 'nosniff',
  });
  expect(Buffer.compare(seen.body as Buffer, bytes)).toBe(0);
  await b.t.call('get', `/v1/photos/${id}`).expect(401);
  for (const path of [`/photos/${digest}.jpg`, `/files/photos/${digest}.jpg`, `/v1/releases/2026/1/..%2f..%2fphotos%2f${digest}.jpg`])
    expect((await b.t.call('get', path)).status).toBeGreaterThanOrEqual(400);
});

test('a tester sees the own alone; others hear that there is none', async () => {
  const reference = await handIn();
  const [{ id }] = (await send(of(reference), plain, 'image/png').expect(201)).body.items as [Listed];
  await b.tester.call('get', `/v1/photos/${id}`).expect(200);
  await b.editor.call('get', `/v1/photos/${id}`).expect(200);
  await b.otherTester.call('get', `/v1/photos/${id}`).expect(404);
  await b.otherTester.call('get', of(reference)).expect(404);
  await b.otherTester.call('delete', `/v1/photos/${id}`).expect(404);
  await send(of(reference), plain, 'image/png', b.otherTester).expect(404);
});

test('pictures of a draft are its tester’s alone and go with it; a form brings one as well', async () => {
  const draft = await b.tester
    .call('post', '/v1/drafts')
    .send({ content: contentFor(b.otherSpool) })
    .expect(201);
  const { reference } = draft.body as { reference: string };
  const form = b.tester.call('post', of(reference)).attach('file', plain, { filename: 'break.exe', contentType: 'image/png' });
  const [{ id }] = (await form.expect(201)).body.items as [Listed];
  await b.reviewer.call('get', `/v1/photos/${id}`).expect(404);
  await b.tester.call('delete', `/v1/drafts/${reference}`).set('If-Match', '"1"').expect(204);
  await b.tester.call('get', `/v1/photos/${id}`).expect(404);
  expect(await b.sql('SELECT 1 FROM photo WHERE id = $1', [id])).toEqual([]);
});

test('what is in a file counts, not what it is called', async () => {
  const reference = await handIn();
  const refused: [Buffer, number, string][] = [
    [Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'), 422, 'photos/not-a-picture'],
    [marked.subarray(0, marked.length / 2), 422, 'photos/not-a-picture'],
    [Buffer.concat([Buffer.from('%PDF-1.7'), marked]), 422, 'photos/not-a-picture'],
    [
      await sharp({ create: { width: 9000, height: 9000, channels: 3, background: '#000' } })
        .png()
        .toBuffer(),
      422,
      'photos/not-a-picture',
    ],
    [Buffer.concat([marked, Buffer.alloc(15 * 1024 * 1024)]), 413, 'photos/too-large'],
  ];
  for (const [bytes, status, code] of refused) expect(await send(of(reference), bytes)).toMatchObject({ status, body: { code } });
  await send(of(reference), plain, 'image/svg+xml').expect(415);
  await b.tester.call('post', of(reference)).send({}).expect(415);
  expect((await b.tester.call('get', of(reference)).expect(200)).body.items).toEqual([]);
});

test('until it is decided its tester takes one away, and the picture is gone; later an editor alone, and nothing comes', async () => {
  const reference = await handIn();
  const other = await sharp(plain).negate().png().toBuffer();
  await send(of(reference), plain, 'image/png').expect(201);
  const [stays, goes] = (await send(of(reference), other, 'image/png').expect(201)).body.items as [Listed, Listed];
  await b.tester.call('delete', `/v1/photos/${goes.id}`).expect(204);
  await b.tester.call('get', `/v1/photos/${goes.id}`).expect(404);
  expect(existsSync(kept(goes.digest))).toBe(false);
  // The same picture of another submission stays where it is.
  expect(existsSync(kept(stays.digest))).toBe(true);
  const seen = (await b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)).body as {
    version: number;
    findings: { id: string; severity: string }[];
  };
  const resolutions = seen.findings.filter(({ severity }) => severity === 'held').map(({ id }) => ({ finding: id, words: 'Stands.' }));
  const review = b.reviewer.call('post', `/v1/submissions/${reference}/reviews`).set('If-Match', `"${seen.version}"`);
  await review.send({ decision: 'accepted', resolutions }).expect(201);
  expect((await send(of(reference), other, 'image/png').expect(409)).body.code).toBe('photos/decided');
  expect((await b.tester.call('delete', `/v1/photos/${stays.id}`).expect(409)).body.code).toBe('photos/decided');
  const late = `INSERT INTO photo (id, submission_id, shows, digest, width, height, size_bytes, added_by_id, added_at)
    SELECT gen_random_uuid(), submission_id, shows, digest, width, height, size_bytes, added_by_id, added_at FROM photo WHERE id = '${stays.id}'`;
  await expect(b.sql(late)).rejects.toThrow(/photo_comes_before_the_decision/);
  await b.editor.call('delete', `/v1/photos/${stays.id}`).expect(204);
  await expect(b.sql('UPDATE photo SET removed_at = NULL')).rejects.toThrow(/photo_is_only_taken_away/);
  await expect(b.sql('DELETE FROM photo')).rejects.toThrow(/photo_is_only_taken_away/);
});

test('a label is for editors and reviewers, who are known to have read it from then on', async () => {
  const path = `/v1/catalogue/spools/${b.otherSpool}/photos`;
  const [{ id }] = (await send(path, plain, 'image/png', b.editor).expect(201)).body.items as [Listed];
  await send(path, plain, 'image/png', b.tester).expect(403);
  await b.tester.call('get', path).expect(403);
  await b.tester.call('get', `/v1/photos/${id}`).expect(404);
  await b.reviewer.call('get', path).expect(200);
  const read = () =>
    b.sql('SELECT k.how FROM key_reading k JOIN spool p ON p.id = k.spool_id WHERE p.blind_code = $1 AND k.account_id = $2', [
      b.otherSpool,
      b.reviewer.accountId,
    ]);
  expect(await read()).toEqual([]);
  await b.reviewer.call('get', `/v1/photos/${id}`).expect(200);
  expect(await read()).toEqual([{ how: 'label' }]);
  await send('/v1/catalogue/spools/NONE222/photos', plain, 'image/png', b.editor).expect(404);
});

test('there is an end to it', async () => {
  const reference = await handIn();
  for (let count = 1; count <= 24; count++) await send(of(reference), plain, 'image/png').expect(201);
  expect((await send(of(reference), plain, 'image/png').expect(409)).body.code).toBe('photos/too-many');
});
