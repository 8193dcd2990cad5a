import pg from 'pg';
import { beginSnapshot, rowsOf } from '../../../api/platform/backup/tables.js';
import type { RecordTable } from '../../../api/platform/backup/tables.js';
import { appliedMigrations } from '../../../api/platform/migrations/apply-migrations.js';
import type { KeptTable } from './kept-winter.js';
import { writeKeptWinter } from './kept-winter.js';

/** Whoever publishes signs in anew, so that what lets anybody in is not kept, and not what is told of it. */
const LETS_IN = new Set(['api_token', 'session', 'sign_in_failure']);
const TELLS_OF_SIGNING_IN = /\t(account\.signedIn|token\.made|token\.revoked)\t/;

/** Looks at a house into which the demo is played, and keeps what the bench work of each winter writes. */
export class WinterKeeper {
  private readonly seen = new Map<string, ReadonlySet<string>>();

  constructor(private readonly databaseUrl: string) {}

  /** Looks at all that is there before the work of another winter begins; before the first there is nothing. */
  async begin(): Promise<void> {
    await this.look(async (client, tables) => {
      for (const table of tables) this.seen.set(table.name, new Set(await rowsOf(client, table)));
    });
  }

  /** Keeps what was written since the beginning. */
  async keep(season: string, blindCodes: ReadonlyMap<string, string>): Promise<void> {
    await this.look(async (client, tables) => {
      const kept: KeptTable[] = [];
      for (const table of tables) kept.push(changed(table, this.seen.get(table.name) ?? new Set(), await rowsOf(client, table)));
      const migrations = (await appliedMigrations(client)).map(({ checksum }) => checksum);
      await writeKeptWinter(season, { migrations, blindCodes: [...blindCodes], tables: kept.filter(({ rows }) => rows.length > 0) });
    });
  }

  private async look(work: (client: pg.Client, tables: readonly RecordTable[]) => Promise<void>): Promise<void> {
    const client = new pg.Client({ connectionString: this.databaseUrl });
    await client.connect();
    try {
      const tables = await beginSnapshot(client);
      await work(
        client,
        tables.filter(({ name }) => !LETS_IN.has(name)),
      );
    } finally {
      await client.end();
    }
  }
}

/** @throws Error where a row is gone: what is laid only adds and replaces */
function changed({ name, columns, key }: RecordTable, before: ReadonlySet<string>, after: readonly string[]): KeptTable {
  const places = (key ?? columns).map((column) => columns.indexOf(column));
  const keyOf = (row: string): string => {
    const cells = row.split('\t');
    return places.map((place) => cells[place]).join('\t');
  };
  const there = new Set(after.map(keyOf));
  const gone = [...before].find((row) => !there.has(keyOf(row)));
  if (gone !== undefined) throw new Error(`A winter took a row of ${name} away, which cannot be kept: ${gone.slice(0, 200)}`);
  const rows = after.filter((row) => !before.has(row) && !TELLS_OF_SIGNING_IN.test(row));
  return { name, columns, key: key ?? columns, rows };
}
