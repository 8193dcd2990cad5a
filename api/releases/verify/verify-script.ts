import { build } from 'esbuild';
import { fileURLToPath } from 'node:url';
import type { ReleaseFile } from '../../reckoning/release-files.js';

const ENTRY = fileURLToPath(new URL('verify-command.ts', import.meta.url));
const HEAD =
  '// Recomputes this release: node verify.mjs. Made from the program that published it; needs Node 20 or newer and nothing else.';

let made: Promise<ReleaseFile> | undefined;

/** The program that verifies a release, in one file; the same text for the same version of the software. */
export function verifyScript(): Promise<ReleaseFile> {
  made ??= makeScript();
  return made;
}

async function makeScript(): Promise<ReleaseFile> {
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
  return { path: 'verify.mjs', mediaType: 'text/javascript; charset=utf-8', content: outputFiles[0]?.text ?? '' };
}
