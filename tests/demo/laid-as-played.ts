import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Manifest } from '../../api/contract/documents/manifest.js';
import type { ReleaseSummary } from '../../api/contract/documents/release-documents.js';
import { inventDemo } from '../../prisma/seed/demo.js';
import { keptWinters } from '../../prisma/seed/kept/lay-winter.js';
import { loadDemoHouse } from '../support/demo-house.js';
import type { DemoHouse } from '../support/demo-house.js';
import { runSql } from '../support/run-sql.js';
import { programUrlOf } from '../support/test-server.js';
import { recordOf } from './same-record.js';

/** Says a house in which the winters are laid, as a start does, to be the one in which they were played through the API. */
export function laidAsPlayed(played: () => DemoHouse): void {
  describe('a house in which the winters are laid as they are kept (where it differs: npm run keep-demo)', () => {
    let laid: DemoHouse;
    beforeAll(async () => {
      laid = await loadDemoHouse('prisma/seed/load-demo.ts');
    }, 600_000);
    afterAll(() => laid.close());

    test('is loaded so, and not played', () => {
      expect(laid.told.filter((line) => line.includes('submissions laid'))).toHaveLength(4);
    });

    test('is played where the schema is another, and where the owner of the database is not its superuser', async () => {
      const seasons = inventDemo().seasons.map(({ season }) => season.slug);
      expect((await keptWinters(laid.databaseUrl, seasons))?.size).toBe(4);
      expect(await keptWinters(programUrlOf(laid.databaseUrl), seasons)).toBeNull();
      await runSql(laid.databaseUrl, `UPDATE "_prisma_migrations" SET checksum = reverse(checksum)`);
      expect(await keptWinters(laid.databaseUrl, seasons)).toBeNull();
    });

    test('has the same record as one in which they were played through the API, table by table and row by row', async () => {
      const [found, expected] = [await recordOf(laid.databaseUrl), await recordOf(played().databaseUrl)];
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
      const [found, expected] = [await filesOf(laid), await filesOf(played())];
      expect(found.filter((file) => !expected.includes(file))).toEqual([]);
      expect(found).toHaveLength(expected.length);
      expect(found.length).toBeGreaterThan(300);
    });

    test('keeps the same records of the load frame', async () => {
      const tracesOf = async ({ dataFolder }: DemoHouse) => (await readdir(join(dataFolder, 'files', 'traces'))).sort();
      expect(await tracesOf(laid)).toEqual(await tracesOf(played()));
    });
  });
}
