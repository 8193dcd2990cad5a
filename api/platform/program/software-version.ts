import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { commitOf } from './commit-of.js';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));

/** Version of the program, as package.json states it. */
export const SOFTWARE_VERSION = (JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { version: string }).version;

/** Commit that the program is of, 40 hexadecimal digits; null where nothing tells it. */
export const SOFTWARE_COMMIT = commitOf(ROOT);
