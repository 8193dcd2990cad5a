/**
 * What it costs to copy everything that a house of the demo's size publishes, and to keep the copy current for a year with one erratum.
 * npm run bench -- mirror
 */
import type { EditionDocument } from '../../api/contract/documents/release-documents.js';
import { demoEditor } from '../../prisma/seed/demo-accounts.js';
import { HouseClient } from '../../prisma/seed/loader/house-client.js';
import { loadDemoHouse } from '../support/demo-house.js';
import { keepCurrentForAYear, mirrorByArchive, mirrorByFile } from '../support/mirror.js';
import type { Cost } from '../support/mirror.js';
import { startTestServer } from '../support/test-server.js';

const server = await startTestServer();
process.env['TEST_SERVER_URL'] = server.url;
const house = await loadDemoHouse();
try {
  const row = (what: string, { requests, bytes }: Cost) => console.log(`| ${what} | ${requests} | ${(bytes / 1e6).toFixed(2)} |`);
  console.log('| what | requests | MB |\n|---|---|---|');
  row('everything, file by file', await mirrorByFile(house.url));
  row('everything, by archive', await mirrorByArchive(house.url));
  const editor = await HouseClient.signedIn(house.url, demoEditor);
  const { byList, byChanges, byWebhook } = await keepCurrentForAYear(house.url, async () => {
    const { overall } = await editor.get<Pick<EditionDocument, 'overall'>>('/v1/editions/2026/divisions/braided');
    const expects = overall.slice(0, 1).map(({ variant, place }) => ({ where: `overall, ${variant.slug}, place`, before: String(place) }));
    const erratum = { reasonCode: 'catalogueError', words: 'A name was put right.', expects };
    await editor.post('/v1/editions/2026/releases', { body: { erratum } });
    await house.publishDue();
  });
  await editor.signOut();
  row('a year, the list every day, file by file', byList);
  row('a year, changes every day, by archive', byChanges);
  row('a year, told by a webhook, by archive', byWebhook);
} finally {
  await house.close();
  await server.stop();
}
