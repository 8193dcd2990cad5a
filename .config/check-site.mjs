// First part of `npm run site:check`: Astro's check of the types in site/. Any hint counts as a fault.
// The configuration of the site goes into the folder that it compiles into, so that folder is a temporary one and the root is named in full.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const path = (name) => fileURLToPath(new URL(`../${name}`, import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'fairpull-site-'));
const { status } = spawnSync(
  process.execPath,
  [path('node_modules/astro/bin/astro.mjs'), 'check', '--root', path('site'), '--minimumFailingSeverity', 'hint'],
  { stdio: 'inherit', env: { ...process.env, SITE_PROGRAM: join(folder, 'site'), ASTRO_TELEMETRY_DISABLED: '1' } },
);
rmSync(folder, { recursive: true, force: true });
process.exit(status ?? 1);
