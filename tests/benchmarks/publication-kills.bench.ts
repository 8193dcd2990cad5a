/**
 * Kills the worker in the middle of publications, at as many counts of files as are asked for, evenly from none to all that a release has
 * and last after the last step, and looks what readers see.
 * npm run bench -- publication-kills [how many, 100]
 */
import { join } from 'node:path';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { createHouse, workEdition } from '../support/house.js';
import { filesIn, killPublication } from '../support/kill-publication.js';
import { moveEdition } from '../support/season.js';
import { startTestServer } from '../support/test-server.js';

const count = Number(process.argv[2] ?? 100);
const server = await startTestServer();
process.env['TEST_SERVER_URL'] = server.url;
const house = await createHouse();
const tally = { sawOld: 0, sawNew: 0, half: 0, notFinished: 0 };
try {
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  await house.editor.call('post', '/v1/editions/2026/releases').send({ erratum: null }).expect(202);
  await house.t.app.select(ReleasesModule).get(ReleaseWork).publishDue();
  const files = await filesIn(join(house.t.dataFolder, 'files/releases/2026/1'));
  await house.t.app.listen(0, '127.0.0.1');
  const address = await house.t.app.getUrl();
  for (let i = 0, current = 1; i < count; i += 1, current += 1) {
    const moment = i === count - 1 ? Infinity : Math.round((files * i) / Math.max(1, count - 2));
    const { seen, differences, finished, differencesAfter } = await killPublication(house, address, '2026', moment);
    if (differences > 0 || differencesAfter > 0 || ![current, current + 1].includes(seen)) tally.half += 1;
    else if (seen === current) tally.sawOld += 1;
    else tally.sawNew += 1;
    if (finished !== current + 1) tally.notFinished += 1;
  }
  console.log(`${count} publications killed at 0 to ${files} files, the last after the last step:`);
  console.log(
    `readers saw the old revision ${tally.sawOld} times, the new one ${tally.sawNew} times, half of one ${tally.half} times; the next worker did not finish ${tally.notFinished} times.`,
  );
  process.exitCode = tally.half + tally.notFinished === 0 ? 0 : 1;
} finally {
  await house.t.close();
  await server.stop();
}
