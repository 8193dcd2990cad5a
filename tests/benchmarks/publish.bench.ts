/**
 * From the order to live pages, for an edition of many entries: where the time goes.
 * npm run bench -- publish [entries, 100]
 */
import { BuildSite } from '../../api/releases/site/build-site.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import { GatherRelease } from '../../api/releases/publication/gather-release.js';
import { PublishRelease } from '../../api/releases/publication/publish-release.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { RunStandingChecks } from '../../api/releases/standing-checks/run-standing-checks.js';
import { createHouse, workEdition } from '../support/house.js';
import { MAKERS, moveEdition } from '../support/season.js';
import { startTestServer } from '../support/test-server.js';

const entries = Number(process.argv[2] ?? 100);
const server = await startTestServer();
process.env['TEST_SERVER_URL'] = server.url;

const variants = Array.from({ length: entries }, (_, i) => ({
  slug: `tern-${i + 10}`,
  maker: MAKERS[i % 2]!.slug,
  forceN: 60 + 1.7 * i,
  diameterMm: 0.16 + 0.002 * i,
  knotPercent: 45 + (i % 30),
  abrasionPercent: 55 + ((i * 7) % 35),
  ratedLbf: String(15 + i),
}));
const house = await createHouse();
try {
  const codes = await fitOutMore();
  await workEdition({ ...house, codes }, '2026', { variants });
  await moveEdition(house.editor, '2026', 'closure');
  const releases = house.t.app.select(ReleasesModule);
  await house.editor.call('post', '/v1/editions/2026/releases').send({ erratum: null }).expect(202);
  const timed = async (what: string, step: () => unknown): Promise<number> => {
    const began = performance.now();
    await step();
    const seconds = (performance.now() - began) / 1000;
    console.log(`| ${what} | ${seconds.toFixed(2)} |`);
    return seconds;
  };
  console.log(`${entries} entries\n\n| step | s |\n|---|---|`);
  let inputs: Awaited<ReturnType<GatherRelease['run']>> | undefined;
  await timed('of it: gathering', async () => (inputs = await releases.get(GatherRelease).run('2026', 1, new Date(), null)));
  await timed('of it: computing every file', () => inputs && computeRelease(inputs));
  const total =
    (await timed('publishing: gather, compute, check, sign, write, record', () =>
      releases.get(PublishRelease).run({ edition: '2026', revision: 1 }),
    )) +
    (await timed('standing checks', () => releases.get(RunStandingChecks).run())) +
    (await timed('building the site, with the standing checks again', () => releases.get(BuildSite).run()));
  console.log(`\nFrom the order to live pages: ${total.toFixed(1)} s`);
} finally {
  await house.t.close();
  await server.stop();
}

/** The variants of this edition beside those that the house has. */
async function fitOutMore(): Promise<Map<string, string>> {
  const codes = new Map(house.codes);
  for (const { slug, maker } of variants) {
    await house.editor
      .call('post', '/v1/catalogue/variants')
      .send({ slug, line: `${maker}-eight`, size: slug, colour: 'moss' })
      .expect(201);
    const spool = { source: 'bought', obtainedOn: '2026-01-05', place: 'A shop in the harbour', lot: null, lengthM: '150' };
    const { body } = await house.editor
      .call('post', '/v1/catalogue/spools')
      .send({ ...spool, variant: slug })
      .expect(201);
    codes.set(slug, (body as { blindCode: string }).blindCode);
  }
  return codes;
}
