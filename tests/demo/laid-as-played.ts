import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Manifest } from '../../api/contract/documents/manifest.js';
import type { ReleaseSummary } from '../../api/contract/documents/release-documents.js';
import { loadDemoHouse } from '../support/demo-house.js';
import type { DemoHouse } from '../support/demo-house.js';
import { runSql } from '../support/run-sql.js';
import { recordOf } from './same-record.js';

/** Says a house in which the first winter is laid, as a start does, to be the one in which it was played through the API; all four take minutes to play. */
export function laidAsPlayed(house: () => DemoHouse): void {
  describe('a house in which a winter is laid as it is kept (where it differs: npm run keep-demo)', () => {
    let laid: DemoHouse;
    let played: DemoHouse;
    beforeAll(async () => {
      laid = await loadDemoHouse('tests/support/load-winters.ts', 'laid', '1');
      played = await loadDemoHouse('tests/support/load-winters.ts', 'played', '1');
    }, 1_800_000);
    afterAll(async () => {
      await laid.close();
      await played.close();
    });

    test('has the same record as one in which it was played through the API, table by table and row by row', async () => {
      const [found, expected] = [await recordOf(laid.databaseUrl), await recordOf(played.databaseUrl)];
      const differing = [...expected].flatMap(([table, rows]) => {
        const same = new Set(found.get(table));
        const lacking = rows.filter((row) => !same.has(row));
        return found.get(table)?.length === rows.length && lacking.length === 0
          ? []
          : [{ table, lacking: lacking.slice(0, 2).map((row) => row.slice(0, 1000)) }];
      });
      expect(differing).toEqual([]);
      expect([...found.keys()]).toEqual([...expected.keys()]);
    });

    test('publishes the same releases, to the byte', async () => {
      const filesOf = async ({ url }: DemoHouse) => {
        const { items } = (await (await fetch(`${url}/v1/releases`)).json()) as { items: ReleaseSummary[] };
        const manifests = items.map(async ({ edition, revision, digest }) => {
          const { files } = (await (await fetch(`${url}/v1/releases/${edition}/${revision}/manifest.json`)).json()) as Manifest;
          return [`${edition}/${revision} ${digest}`, ...files.map(({ path, sha256 }) => `${edition}/${revision}/${path} ${sha256}`)];
        });
        return (await Promise.all(manifests)).flat();
      };
      const [found, expected] = [await filesOf(laid), await filesOf(played)];
      expect(found.filter((file) => !expected.includes(file))).toEqual([]);
      expect(found).toHaveLength(expected.length);
      expect(found.length).toBeGreaterThan(100);
    });

    test('of all winters, each record of the load frame lies under its digest', async () => {
      const { databaseUrl, dataFolder } = house();
      const kept = await runSql(databaseUrl, 'SELECT DISTINCT digest FROM trace ORDER BY digest');
      expect(kept.length).toBeGreaterThan(0);
      expect((await readdir(join(dataFolder, 'files', 'traces'))).sort()).toEqual(kept.map(({ digest }) => `${String(digest)}.csv`));
    });
  });
}
