import { build } from 'esbuild';
import { execFile } from 'node:child_process';
import { cp, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { extname, join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { compileAgainst } from './compile-client.js';
import { pythonClient } from './python-client.js';

const run = promisify(execFile);
const EXAMPLES = 'site/src/examples';
const SHELL: Readonly<Record<string, string>> = { '.sh': 'sh', '.py': 'python3', '.R': 'Rscript' };

async function inFolder<Answer>(work: (folder: string) => Promise<Answer>): Promise<Answer> {
  const folder = await mkdtemp(join(tmpdir(), 'example-'));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true });
  }
}

/**
 * Compiles a program against the client that a house serves, and runs it.
 * @returns what it prints
 * @throws Error with what the compiler says
 */
const runTypeScript = (program: string, house: string): Promise<string> =>
  inFolder(async (folder) => {
    const part = async (name: string) => (await fetch(`${house}/client/${name}`)).text();
    const faults = await compileAgainst(folder, program, { module: await part('fairpull.mjs'), types: await part('fairpull.d.mts') });
    if (faults !== '') throw new Error(faults);
    const outfile = join(folder, 'program.mjs');
    await build({ entryPoints: [join(folder, 'program.ts')], bundle: true, platform: 'node', format: 'esm', target: 'node20', outfile });
    return (await run(process.execPath, [outfile, house])).stdout;
  });

/** Runs the program that reads everything. */
export async function runClient(program: string, house: string): Promise<{ read: string[]; texts: number[] }> {
  return JSON.parse(await runTypeScript(program, house)) as { read: string[]; texts: number[] };
}

/** Runs the program that reads everything in Python, by classes made from the description that the house serves; answers what it prints. */
export const runPython = (program: string, house: string): Promise<string> =>
  inFolder(async (folder) => {
    const described: unknown = await (await fetch(`${house}/v1/openapi.json`)).json();
    await writeFile(join(folder, 'fairpull.py'), await pythonClient(described));
    await cp(program, join(folder, 'program.py'));
    return (await run('python3', ['program.py', house], { cwd: folder })).stdout;
  });

/** Runs an example of the site as it stands there; answers what it prints. */
export async function runExample(name: string, house: string): Promise<string> {
  if (name.endsWith('.ts')) return runTypeScript(resolve(EXAMPLES, name), house);
  return inFolder(async (folder) => {
    await cp(EXAMPLES, folder, { recursive: true });
    const env = { PATH: process.env['PATH'], HERE: house };
    try {
      return (await run(SHELL[extname(name)] ?? '', [name], { cwd: folder, env })).stdout;
    } catch (error) {
      const { code, stdout, stderr } = error as { code: number; stdout: string; stderr: string };
      throw new Error(`${name} ended with ${code}: ${stdout}${stderr}`, { cause: error });
    }
  });
}
