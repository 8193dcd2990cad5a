/** `npm run bench -- publication-kills` does it a hundred times. */
import { ReleaseWork } from '../../api/releases/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { createHouse, workEdition } from '../support/house.js';
import type { House } from '../support/house.js';
import { killPublication } from '../support/kill-publication.js';
import { moveEdition } from '../support/season.js';

let house: House;
let address: string;
let current = 1;

beforeAll(async () => {
  house = await createHouse();
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  const work = house.t.app.select(ReleasesModule).get(ReleaseWork);
  await house.editor.call('post', '/v1/editions/2026/releases').send({ erratum: null }).expect(202);
  await work.publishDue();
  await house.t.app.listen(0, '127.0.0.1');
  address = await house.t.app.getUrl();
}, 120_000);
afterAll(() => house.t.close());

// At the first file, at the last but the seal, and after the database has said so.
test.each([1, 22, Infinity])(
  'killed at %d files: readers see the old or the new, whole; the next worker finishes',
  async (moment) => {
    const { seen, differences, finished, differencesAfter } = await killPublication(house, address, '2026', moment);
    expect([current, current + 1]).toContain(seen);
    if (moment === Infinity) expect(seen).toBe(current + 1);
    expect([differences, differencesAfter]).toEqual([0, 0]);
    current += 1;
    expect(finished).toBe(current);
  },
  120_000,
);
