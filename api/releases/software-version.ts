import { readFileSync } from 'node:fs';

/** Version of the program, as package.json states it. */
export const SOFTWARE_VERSION = (JSON.parse(readFileSync('package.json', 'utf8')) as { version: string }).version;
