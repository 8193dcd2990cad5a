// `node --import ./.config/load-typescript.mjs <program.ts>`: runs TypeScript as it lies there. What swc makes of a file is kept beside the
// packages, so that a program is made once and not at each of its starts.
import { createHash, randomUUID } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { createRequire, registerHooks } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const KEPT = join(ROOT, 'node_modules', '.cache', 'typescript');
const require = createRequire(import.meta.url);
/** Another compiler, or other settings of it, make another program. */
const MADE_BY = readFileSync(join(ROOT, '.swcrc'), 'utf8') + readFileSync(require.resolve('@swc/core/package.json'), 'utf8');
const isOurs = (url) => url.startsWith('file:') && url.endsWith('.ts') && !url.includes('/node_modules/');

registerHooks({
  resolve(specifier, context, next) {
    if (specifier.startsWith('.') && specifier.endsWith('.js') && isOurs(context.parentURL ?? '')) {
      const url = new URL(`${specifier.slice(0, -3)}.ts`, context.parentURL);
      if (existsSync(url)) return { url: url.href, format: 'module', shortCircuit: true };
    }
    return next(specifier, context);
  },
  load(url, context, next) {
    if (!isOurs(url)) return next(url, context);
    return { format: 'module', source: madeOf(fileURLToPath(url)), shortCircuit: true };
  },
});
process.setSourceMapsEnabled(true);

function madeOf(file) {
  const source = readFileSync(file, 'utf8');
  const digest = createHash('sha256').update(`${MADE_BY}\0${file}\0${source}`).digest('hex');
  const kept = join(KEPT, `${digest}.js`);
  if (existsSync(kept)) return readFileSync(kept, 'utf8');
  const { code } = require('@swc/core').transformSync(source, { filename: file, cwd: ROOT, swcrc: true });
  keep(kept, code);
  return code;
}

/** Where nothing can be written the program runs all the same. */
function keep(file, code) {
  const half = `${file}.${randomUUID()}`;
  try {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(half, code);
    renameSync(half, file);
  } catch {
    return;
  }
}
