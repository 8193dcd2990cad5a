import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { SeasonIdentifiers } from '../../prisma/seed/loader/season-identifiers.js';
import { createHouse, workEdition } from '../support/house.js';
import { moveEdition, publish } from '../support/season.js';

test('the same work in another house gives the same bytes', async () => {
  const bundles: Buffer[] = [];
  for (let i = 0; i < 2; i += 1) {
    const twin = await createHouse(new SeasonIdentifiers(7));
    try {
      await workEdition(twin, '2026');
      await moveEdition(twin.editor, '2026', 'closure');
      await twin.t.app.select(ReleasesModule).get(ReleaseWork).start(false);
      await publish(twin.editor, '2026');
      const read = async (path: string) => (await twin.t.app.inject({ method: 'GET', url: `/v1/releases/2026/1/${path}` })).rawPayload;
      bundles.push(await read('bundle.json'), await read('manifest.json'));
    } finally {
      await twin.t.close();
    }
  }
  expect(bundles[0]!.length).toBeGreaterThan(10_000);
  expect(bundles[2]!.equals(bundles[0]!)).toBe(true);
  expect(bundles[3]!.equals(bundles[1]!)).toBe(true);
});
