/** Verifies a release of any age: by today's program where that computes what was published, else by the program that lies in the release. */
import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, realpath, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import type { Manifest } from '../../contract/documents/release-documents.js';
import { isAddition } from './differences.js';
import type { Difference } from './differences.js';
import { verifyRelease, SCRIPT } from './verify-release.js';
import type { ReleaseSource } from './verify-release.js';
import type { ReportedVerdict } from './verify-report.js';
import { verifyScript } from './verify-script.js';

const WITHIN_MS = 300_000;
const MOST_TOLD = 2000;
const ALL_EQUAL = /(\d+) figures recomputed, all equal/;

/**
 * Verifies a release, whichever program published it.
 * @throws Error when there is no manifest or no bundle to start from
 */
export async function verifyAny(source: ReleaseSource): Promise<ReportedVerdict> {
  const verdict = await verifyRelease(source, sha256((await verifyScript()).content));
  const isComputed = verdict.figures !== null && verdict.otherwise.every(isAddition);
  // Its script is run only as it was signed: where any file is not, that is told instead.
  if (isComputed || verdict.differences.length > 0) return verdict;
  const { figures, fault } = await runOwnProgram(source);
  if (fault === null) return { ...verdict, figures, isByOwnProgram: true };
  return { ...verdict, isByOwnProgram: true, differences: [...verdict.differences, fault] };
}

/**
 * Runs the script inside a release on a copy of it. It can read that copy and nothing else, write nothing and start nothing (Node's
 * permission model); a release that somebody handed us is no reason to trust its script with more.
 */
async function runOwnProgram(source: ReleaseSource): Promise<{ figures: number | null; fault: Difference | null }> {
  const folder = await realpath(await mkdtemp(join(tmpdir(), 'fairpull-own-program-')));
  try {
    await layOut(source, folder);
    const { code, output } = await run(folder);
    const figures = ALL_EQUAL.exec(output)?.[1];
    if (code === 0 && figures !== undefined) return { figures: Number(figures), fault: null };
    return { figures: null, fault: { file: SCRIPT, where: '', found: output.slice(-MOST_TOLD).trim(), expected: 'all figures equal' } };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function layOut(source: ReleaseSource, folder: string): Promise<void> {
  const { files } = JSON.parse(new TextDecoder().decode((await source.read('manifest.json')) ?? undefined)) as Manifest;
  for (const path of ['manifest.json', 'signature.json', ...files.map((file) => file.path)]) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), (await source.read(path)) ?? '');
  }
}

function run(folder: string): Promise<{ code: number; output: string }> {
  const permission = process.allowedNodeEnvironmentFlags.has('--permission') ? '--permission' : '--experimental-permission';
  const args = [permission, `--allow-fs-read=${folder}`, '--disable-warning=ExperimentalWarning', join(folder, SCRIPT), folder];
  return new Promise((resolve) => {
    execFile(process.execPath, args, { env: {}, timeout: WITHIN_MS, maxBuffer: 1e8, cwd: folder }, (error, stdout, stderr) => {
      resolve({ code: error === null ? 0 : 1, output: stdout + stderr });
    });
  });
}
