import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { ReleaseFile } from '../../reckoning/release-files.js';
import { SCRIPT } from './verify-release.js';

const ENTRY = fileURLToPath(new URL('verify-command.ts', import.meta.url));
const HEAD =
  '// Recomputes this release: node verify.mjs. Made from the program that published it; needs Node 20 or newer and nothing else.';

/** Name of the script beside this module where it was made with the image, from the same sources and so with the same bytes. */
export const MADE_SCRIPT = SCRIPT;
const MADE = fileURLToPath(new URL(MADE_SCRIPT, import.meta.url));

let made: Promise<ReleaseFile> | undefined;

/** The program that verifies a release, in one file; the same text for the same version of the software. */
export function verifyScript(): Promise<ReleaseFile> {
  made ??= (existsSync(MADE) ? readFile(MADE, 'utf8') : makeScript()).then((content) => ({
    path: SCRIPT,
    mediaType: 'text/javascript; charset=utf-8',
    content,
  }));
  return made;
}

async function makeScript(): Promise<string> {
  const { build } = await import('esbuild');
  const { outputFiles } = await build({
    entryPoints: [ENTRY],
    bundle: true,
    write: false,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    minify: true,
    charset: 'utf8',
    legalComments: 'inline',
    banner: { js: `${HEAD}\nimport { createRequire } from 'node:module';\nconst require = createRequire(import.meta.url);` },
  });
  return outputFiles[0]?.text ?? '';
}
