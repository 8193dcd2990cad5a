import { spawnSync } from 'node:child_process';
import { mirrorByArchive, mirrorByFile } from '../support/mirror.js';
import { runClient, runExample, runPython } from '../support/run-examples.js';

interface Told {
  readonly kind: string;
}

/** What integrators do with a house that is loaded and listens. */
export function integratorsRead(house: () => string): void {
  test('a program reads every public document by the client of the house, without a cast', async () => {
    const { read: documents, texts } = await runClient('tests/clients/read-everything.mts', house());
    expect(documents).toHaveLength(31);
    expect(texts.filter((length) => length === 0)).toEqual([]);
  });

  test('so does one in Python, by the classes that a generator makes of the description: nothing is lost on the way', async () => {
    expect(await runPython('tests/clients/read_everything.py', house())).toMatch(/^32 \d{2,} [\d.]+ \S+\n$/);
  });

  test('the worked examples run as they stand', async () => {
    expect(await runExample('latest-standings.sh', house())).toMatch(/^edition,revision,[^\n]*\r?\n2026,/);
    expect(await runExample('one-variant.ts', house())).toMatch(/ 2026 apparent-stress \d+\n/);
    expect(await runExample('verify-a-release.sh', house())).toMatch(/\d+ figures recomputed, all equal/);
    expect(await runExample('watch-for-errata.sh', house())).toBe('1\n');
    expect(await runExample('data-frame.py', house())).toMatch(/^2024 [a-z-]+ [a-z0-9-]+ [\d.]+ /m);
  });

  test('so do those for people who work in the house, on the season that is open', async () => {
    expect(await runExample('hand-in.sh', house())).toMatch(/^inControl\nhanded in as S-2027-\d{4}\n$/);
    expect(await runExample('review.sh', house())).toMatch(/^S-2027-\d{4} is accepted\n$/);
    expect(await runExample('line-and-spool.sh', house())).toMatch(/^spool [0-9A-Z]{7}; \d+ things stand in the way of closing\n$/);
  });

  // .ci/run installs R where it may; elsewhere the run says that this was skipped.
  const withR = spawnSync('Rscript', ['--version']).status === 0 ? test : test.skip;
  withR('the worked example in R runs as it stands, by R alone', async () => {
    expect(await runExample('data-frame.R', house())).toMatch(/^\d+ +2024 +[a-z-]+ +[a-z0-9-]+ +[\d.]+ +\S+$/m);
  });

  test('after a correction who follows is told which variant the results of another went to', async () => {
    const { items } = (await (await fetch(`${house()}/v1/changes?limit=1000`)).json()) as { items: Told[] };
    const corrected = items.findIndex(({ kind }) => kind === 'erratum.published');
    expect(items.slice(corrected, corrected + 2)).toMatchObject([
      { edition: '2025', revision: 2, erratum: { reasonCode: 'reidentification' } },
      {
        kind: 'variant.reidentified',
        edition: null,
        thing: { kind: 'variant', slug: 'harrowknit-4-pe-1-2', successor: 'harrowknit-4-pe-1-5' },
      },
    ]);
    // Other spools of it stay what they are: it answers for itself.
    expect((await fetch(`${house()}/v1/variants/harrowknit-4-pe-1-2`, { redirect: 'manual' })).status).toBe(200);
  });

  test('everything is copied by three requests a release, where it took one a file', async () => {
    const [byFile, byArchive] = [await mirrorByFile(house()), await mirrorByArchive(house())];
    expect(byArchive.requests).toBe(1 + 3 * 4);
    expect(byFile.requests).toBeGreaterThan(20 * byArchive.requests);
    expect(byArchive.bytes).toBeLessThan(1.3 * byFile.bytes);
  });
}
