import type { Migration } from './read-migrations.js';

/** A row of `_prisma_migrations` that was not rolled back. */
export interface AppliedMigration {
  readonly name: string;
  readonly checksum: string;
  readonly isFinished: boolean;
}

/**
 * The database's history must be a beginning of the folder's.
 * @throws Error naming the first migration that is unfinished, unknown, changed since it was applied, or older than an applied one
 */
export function requireSameHistory(migrations: readonly Migration[], applied: readonly AppliedMigration[]): void {
  const written = new Map(migrations.map((migration) => [migration.name, migration]));
  for (const { name, checksum, isFinished } of applied) {
    const migration = written.get(name);
    if (!isFinished) {
      throw new Error(
        `Migration ${name} was begun in this database and never finished. Repair it by hand, then mark it with \`prisma migrate resolve\`.`,
      );
    }
    if (!migration) {
      throw new Error(
        `The database knows migration ${name}, this version of the program does not: the database is newer. Start the newer version.`,
      );
    }
    if (migration.checksum !== checksum) {
      throw new Error(
        `Migration ${name} was changed after it was applied: SHA-256 ${checksum} then, ${migration.checksum} now. ` +
          'Put the file back as it was, and write the change as a new migration.',
      );
    }
  }
  requireNoGap(migrations, new Set(applied.map(({ name }) => name)));
}

function requireNoGap(migrations: readonly Migration[], applied: ReadonlySet<string>): void {
  const firstPending = migrations.findIndex(({ name }) => !applied.has(name));
  if (firstPending === -1) return;
  const later = migrations.slice(firstPending).find(({ name }) => applied.has(name));
  if (later) {
    throw new Error(
      `Migration ${migrations[firstPending]?.name ?? ''} is not applied, but ${later.name}, which comes after it, is. Rename the first so that it comes last.`,
    );
  }
}
