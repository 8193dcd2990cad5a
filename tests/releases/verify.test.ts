/** A release is verified by anybody, with nothing but its own folder; and nothing in it can be changed unseen. */
import { execFile } from 'node:child_process';
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { canonicalJson } from '../../api/reckoning/canonical-json.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import { ARCHIVE } from '../../api/reckoning/release-archive.js';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { releasesAt } from '../../api/releases/verify/release-source.js';
import { verifyAny } from '../../api/releases/verify/verify-any.js';
import { chainFaults } from '../../api/releases/verify/verify-chain.js';
import { verifyRelease } from '../../api/releases/verify/verify-release.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { sealAnew } from '../support/seal-anew.js';
import { erratumFor, moveEdition, publish } from '../support/season.js';

const run = promisify(execFile);
const COMMAND = ['--import', './.config/load-typescript.mjs', 'api/releases/verify/verify-any-command.ts'];
const ROOT = fileURLToPath(new URL('../..', import.meta.url));

let house: House;
let folder: string;
let address: string;
const first = () => join(folder, '2026-1');

beforeAll(async () => {
  house = await createHouse();
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
  await publish(house.editor, '2026');
  await publish(house.editor, '2026', await erratumFor(house.editor, '2026', 'catalogueError', 'The colour on the box was misread.'));
  await house.t.app.listen(0, '127.0.0.1');
  address = await house.t.app.getUrl();
  folder = await mkdtemp(join(tmpdir(), 'fairpull-verify-'));
  for (const revision of [1, 2]) await download(revision, join(folder, `2026-${revision}`));
});
afterAll(async () => {
  await house.t.close();
  await rm(folder, { recursive: true, force: true });
});

async function download(revision: number, to: string): Promise<void> {
  const read = async (path: string) => Buffer.from(await (await fetch(`${address}/v1/releases/2026/${revision}/${path}`)).arrayBuffer());
  const manifest = JSON.parse((await read('manifest.json')).toString()) as { files: { path: string }[] };
  for (const path of ['manifest.json', 'signature.json', ...manifest.files.map((file) => file.path)]) {
    await mkdir(dirname(join(to, path)), { recursive: true });
    await writeFile(join(to, path), await read(path));
  }
}

/** Runs a program to its end. */
async function ended(program: string, args: readonly string[]): Promise<{ code: number; output: string }> {
  try {
    const { stdout, stderr } = await run(program, [...args], { cwd: ROOT });
    return { code: 0, output: stdout + stderr };
  } catch (error) {
    const { code, stdout, stderr } = error as { code: number; stdout: string; stderr: string };
    return { code, output: stdout + stderr };
  }
}

const verdictOf = async (place: string) => verifyRelease((await releasesAt(place))[0]!);

/** A copy of the first revision that a test may spoil. */
async function withCopy<Answer>(spoil: (copy: string) => Promise<Answer>): Promise<Answer> {
  const copy = await mkdtemp(join(tmpdir(), 'fairpull-copy-'));
  try {
    await cp(first(), copy, { recursive: true });
    return await spoil(copy);
  } finally {
    await rm(copy, { recursive: true, force: true });
  }
}

describe('whoever holds a release', () => {
  test('verifies it with the script inside, by plain Node', async () => {
    const { code, output } = await withCopy((copy) => ended(process.execPath, [join(copy, 'verify.mjs')]));
    expect(output).toMatch(/^2026, revision 1/);
    expect(output).toMatch(/\d{3,} figures recomputed, all equal; \d+ files, every one as signed\.\n$/);
    expect(code).toBe(0);
  });

  test('is shown each difference, and the script fails', async () => {
    const { code, output } = await withCopy(async (copy) => {
      const path = join(copy, 'documents/edition.json');
      const edition = JSON.parse(await readFile(path, 'utf8'));
      edition.overall[0].score = '99';
      await writeFile(path, canonicalJson(edition));
      return ended(process.execPath, [join(copy, 'verify.mjs')]);
    });
    expect(code).toBe(1);
    expect(output).toMatch(/documents\/edition\.json: found \d+ bytes, SHA-256/);
    expect(output).toMatch(/documents\/edition\.json \/overall\/0\/score: found "99"; expected "\d/);
  });

  test('verifies the releases of an address with their chain by the command; a place without one is told', async () => {
    const { code, output } = await ended(process.execPath, [...COMMAND, address]);
    expect([code, output.match(/figures recomputed, all equal/g)?.length]).toEqual([0, 1]);
    const nowhere = await ended(process.execPath, [...COMMAND, join(folder, '2026-1/csv')]);
    expect(nowhere).toMatchObject({ code: 2, output: expect.stringMatching(/No release was found at/) });
  });

  test('finds several in a folder, or one at its own address', async () => {
    for (const [place, count] of [
      [folder, 2],
      [`${address}/v1/releases/2026/2/`, 1],
    ] as const)
      expect(await releasesAt(place)).toHaveLength(count);
  });
});

test('digest and key are those that the publisher shows', async () => {
  const { digest, keyFingerprint } = await verdictOf(first());
  const { items } = (await house.t.call('get', '/v1/releases').expect(200)).body;
  expect(items.map((item: any) => item.digest)).toContain(digest);
  const keys = (await house.t.call('get', '/v1/signing-keys').expect(200)).body.items;
  expect(keys).toEqual([expect.objectContaining({ fingerprint: keyFingerprint })]);
});

describe('nothing is changed unseen', () => {
  test('no byte of any file', async () => {
    const paths = (await readdir(first(), { recursive: true, withFileTypes: true }))
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) => join(parentPath, name));
    const found = await withCopy(async (copy) => {
      const unseen: string[] = [];
      for (const [index, original] of paths.entries()) {
        const path = original.replace(first(), copy);
        const bytes = await readFile(original);
        const at = (index * 7919 + 13) % bytes.length;
        const changed = Buffer.from(bytes);
        changed[at] = (changed[at]! + 1) % 256;
        await writeFile(path, changed);
        const isSeen = await verdictOf(copy).then(
          ({ differences }) => differences.length > 0,
          () => true,
        );
        if (!isSeen) unseen.push(`${path} at ${at}`);
        await writeFile(path, bytes);
      }
      return unseen;
    });
    expect(paths.length).toBeGreaterThan(15);
    expect(found).toEqual([]);
  });

  test.each(['README.md', 'signature.json', 'documents/edition.json'])('nor is %s taken away', async (path) => {
    const { differences } = await withCopy(async (copy) => {
      await rm(join(copy, path));
      return verdictOf(copy);
    });
    expect(differences.map(({ file }) => file)).toContain(path);
  });

  test('nor is a file put in', async () => {
    const { differences } = await withCopy(async (copy) => {
      await writeFile(join(copy, 'csv/more.csv'), 'place\r\n1\r\n');
      return verdictOf(copy);
    });
    expect(differences).toEqual([expect.objectContaining({ file: 'csv/more.csv', expected: 'no such file' })]);
  });

  test('nor an output, even by somebody who seals and signs anew', async () => {
    const { differences } = await withCopy(async (copy) => {
      await sealAnew(copy, async (read) => {
        const edition = JSON.parse(await read('documents/edition.json'));
        edition.overall[0].score = '1';
        return new Map([['documents/edition.json', canonicalJson(edition)]]);
      });
      return verdictOf(copy);
    });
    expect(differences).toEqual([expect.objectContaining({ file: 'documents/edition.json', where: '/overall/0/score', found: '"1"' })]);
  });

  test('nor an input with all that follows: the key is another, and the next release names another digest', async () => {
    const forged = await withCopy(async (copy) => {
      await sealAnew(copy, async (read) => {
        const { inputs } = JSON.parse(await read('bundle.json'));
        inputs.evidence.edition.entries[0].exclusion = null;
        inputs.evidence.submissions[0].specimens[0].readings[0].valueSi = '250';
        return new Map(computeRelease(inputs).map(({ path, content }) => [path, content]));
      });
      return verdictOf(copy);
    });
    const [real, second] = [await verdictOf(first()), await verdictOf(join(folder, '2026-2'))];
    expect(forged.differences).toEqual([]);
    expect(forged.keyFingerprint).not.toBe(real.keyFingerprint);
    expect(chainFaults([real, second])).toEqual([]);
    expect(chainFaults([forged, second])).toEqual([
      expect.objectContaining({ file: '2026/2/manifest.json', where: '/previousDigest', expected: forged.digest }),
    ]);
  });
});

test('whoever unpacked the archive has the release, but for manifest and signature; what is in it is what lies beside it', async () => {
  const { differences } = await withCopy(async (copy) => {
    await rm(join(copy, ARCHIVE));
    return verdictOf(copy);
  });
  expect(differences).toEqual([]);
  const forged = await withCopy(async (copy) => {
    const other = Buffer.from(await readFile(join(copy, ARCHIVE)));
    const manifest = JSON.parse(await readFile(join(copy, 'manifest.json'), 'utf8'));
    other[other.length - 1] = 1;
    await writeFile(join(copy, ARCHIVE), other);
    manifest.files.find(({ path }: any) => path === ARCHIVE).sha256 = sha256(other);
    await writeFile(join(copy, 'manifest.json'), canonicalJson(manifest));
    return verdictOf(copy);
  });
  expect(forged.differences.map(({ file }) => file)).toContain(ARCHIVE);
});

describe('a release of another program', () => {
  /** A copy whose script is another, and in which values of the edition are changed before it is sealed. */
  const ofAnother = (script: string, change: (edition: any) => void) =>
    withCopy(async (copy) => {
      await sealAnew(copy, async (read) => {
        const edition = JSON.parse(await read('documents/edition.json'));
        change(edition);
        const program = `${await read('verify.mjs')}\n`;
        return new Map([
          ['documents/edition.json', canonicalJson(edition)],
          ['verify.mjs', script === '' ? program : script],
        ]);
      });
      return verifyAny((await releasesAt(copy))[0]!);
    });
  const toldBy = (script: string) =>
    ofAnother(script, (edition) => {
      edition.overall[0].score = '1';
    });

  test('may lack what was added since: that is told, and is no difference', async () => {
    const { differences, otherwise, isByOwnProgram, figures } = await ofAnother('', (edition) => {
      delete edition.overall[0].score;
    });
    expect([differences, otherwise.map(({ where }) => where), isByOwnProgram]).toEqual([[], ['/overall/0/score'], undefined]);
    expect(figures).toBeGreaterThan(100);
  });

  test('that computes otherwise is computed again by its own program, which tells what is wrong', async () => {
    const { differences, isByOwnProgram } = await toldBy('');
    expect(isByOwnProgram).toBe(true);
    expect(differences).toEqual([expect.objectContaining({ file: 'verify.mjs', expected: 'all figures equal' })]);
    expect(differences[0]?.found).toMatch(/overall\/0\/score: found "1"/);
    const well = await toldBy(`console.log('7 figures recomputed, all equal');`);
    expect([well.differences, well.figures, well.otherwise.map(({ where }) => where)]).toEqual([[], 7, ['/overall/0/score']]);
  });

  test.each([
    ['read the machine', `import { readFileSync } from 'node:fs'; readFileSync('/etc/passwd');`],
    ['write', `import { writeFileSync } from 'node:fs'; writeFileSync(new URL('x', import.meta.url), 'x');`],
    ['start programs', `import { execSync } from 'node:child_process'; execSync('true');`],
  ])('cannot %s', async (_, script) => {
    const { differences } = await toldBy(`${script} console.log('7 figures recomputed, all equal');`);
    expect(differences[0]?.found).toMatch(/ERR_ACCESS_DENIED/);
  });

  test('is not run when any file of it is not as it was signed', async () => {
    const { differences, isByOwnProgram } = await withCopy(async (copy) => {
      await writeFile(join(copy, 'verify.mjs'), `console.log('7 figures recomputed, all equal');`);
      return verifyAny((await releasesAt(copy))[0]!);
    });
    expect([differences.map(({ file }) => file), isByOwnProgram]).toEqual([['verify.mjs'], undefined]);
  });

  test('of another format is verified by the command, too', async () => {
    const { code, output } = await ended(process.execPath, [...COMMAND, 'tests/releases/golden/format-1']);
    expect([code, output.match(/recomputed by the program that lies in it/g)?.length]).toEqual([0, 3]);
  });
});

test('a chain that leads to a release that is not there is told', async () => {
  const second = await verdictOf(join(folder, '2026-2'));
  const other = { ...second, edition: '2027', revision: 1, digest: 'd', previousDigest: 'lost' };
  expect(chainFaults([second])).toEqual([]);
  expect(chainFaults([second, other])).toContainEqual(expect.objectContaining({ found: 'lost' }));
});
