import pg from 'pg';

/** Quoted for SQL. */
const named = (name: string): string => pg.escapeIdentifier(name);

/**
 * Lets the program's own role work with the record that the owner's role has migrated: read and write rows, and nothing that would get
 * around a rule. It owns no table of the record, so it can neither switch off a trigger nor empty, change or drop a table. Makes the role
 * when it is missing; its password is that of the address. The job queue's tables are its own.
 * @param ownerUrl address for migrations
 * @param programUrl address for server and worker, on the same database
 */
export async function grantToProgram(ownerUrl: string, programUrl: string): Promise<void> {
  const { username, password } = new URL(programUrl);
  const name = decodeURIComponent(username);
  const secret = pg.escapeLiteral(decodeURIComponent(password));
  const client = new pg.Client({ connectionString: ownerUrl, application_name: 'fairpull: migrations', connectionTimeoutMillis: 10_000 });
  await client.connect();
  try {
    await client.query('BEGIN');
    // Two that start at once wait for each other.
    await client.query(`SELECT pg_advisory_xact_lock(hashtextextended('role of the program', 0))`);
    const { rowCount } = await client.query('SELECT 1 FROM pg_roles WHERE rolname = $1', [name]);
    await client.query(
      `${rowCount === 0 ? 'CREATE' : 'ALTER'} ROLE ${named(name)} LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOREPLICATION PASSWORD ${secret}`,
    );
    await client.query(rightsOf(name));
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK').catch(() => undefined);
    throw new Error(`The program's role could not be given its rights: ${(error as Error).message}`, { cause: error });
  } finally {
    await client.end();
  }
}

/** Does so where the program has a role of its own; where it is the owner there is nothing to give. */
export async function letProgramIn(ownerUrl: string, programUrl: string): Promise<void> {
  if (new URL(ownerUrl).username !== new URL(programUrl).username) await grantToProgram(ownerUrl, programUrl);
}

const rightsOf = (name: string): string => `
  GRANT USAGE ON SCHEMA public TO ${named(name)};
  GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA public TO ${named(name)};
  REVOKE INSERT, UPDATE, DELETE ON "_prisma_migrations" FROM ${named(name)};
  GRANT ${named(name)} TO CURRENT_USER;
  ALTER SCHEMA pgboss OWNER TO ${named(name)};
  DO $$
  DECLARE part record;
  BEGIN
    FOR part IN
      SELECT 'TABLE' AS kind, oid::regclass::text AS name FROM pg_class WHERE relnamespace = 'pgboss'::regnamespace AND relkind IN ('r', 'p', 'v')
      UNION ALL SELECT 'FUNCTION', oid::regprocedure::text FROM pg_proc WHERE pronamespace = 'pgboss'::regnamespace
      UNION ALL SELECT 'TYPE', oid::regtype::text FROM pg_type WHERE typnamespace = 'pgboss'::regnamespace AND typtype = 'e'
    LOOP
      EXECUTE format('ALTER %s %s OWNER TO %I', part.kind, part.name, ${pg.escapeLiteral(name)});
    END LOOP;
  END $$`;
