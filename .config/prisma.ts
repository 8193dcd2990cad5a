import { defineConfig } from 'prisma/config';

// Paths are relative to this folder.
export default defineConfig({
  schema: '../prisma',
  migrations: { path: '../prisma/migrations' },
  // Commands that meet no database (generate, validate) run without an address.
  ...(process.env['DATABASE_URL'] && { datasource: { url: process.env['DATABASE_URL'] } }),
});
