import { execFile } from 'node:child_process';
import { cp, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);
const ROOT = process.cwd();
const OPTIONS = {
  strict: true,
  noEmit: true,
  noUncheckedIndexedAccess: true,
  exactOptionalPropertyTypes: true,
  module: 'nodenext',
  target: 'es2022',
  lib: ['es2023', 'dom', 'dom.iterable'],
  types: ['node'],
  typeRoots: [join(ROOT, 'node_modules/@types')],
  allowImportingTsExtensions: true,
  skipLibCheck: false,
};

/**
 * Compiles a program that uses the typed client.
 * @param folder where it is laid, with the client beside it
 * @param program path of its source
 * @returns what the compiler says; nothing where all is well
 */
export async function compileAgainst(
  folder: string,
  program: string,
  { module, types }: { module: string; types: string },
): Promise<string> {
  await writeFile(join(folder, 'package.json'), '{"type":"module"}');
  await writeFile(join(folder, 'fairpull.mjs'), module);
  await writeFile(join(folder, 'fairpull.d.mts'), types);
  await cp(program, join(folder, 'program.ts'));
  await writeFile(join(folder, 'tsconfig.json'), JSON.stringify({ compilerOptions: OPTIONS, files: ['program.ts'] }));
  const compiler = join(ROOT, 'node_modules/@typescript/native/bin/tsc');
  const { stdout } = await run(process.execPath, [compiler, '-p', folder]).catch((error: unknown) => error as { stdout: string });
  return stdout;
}
