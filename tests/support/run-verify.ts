import { execFile } from 'node:child_process';

/** A place and a language that a program runs in. */
export interface Surroundings {
  readonly TZ: string;
  readonly LC_ALL: string;
}

/** Three time zones, far east, far west and none, by two languages, one with a decimal comma. */
export const SURROUNDINGS: readonly Surroundings[] = ['Pacific/Kiritimati', 'America/Los_Angeles', 'UTC'].flatMap((TZ) =>
  ['en_US.UTF-8', 'de_DE.UTF-8'].map((LC_ALL) => ({ TZ, LC_ALL })),
);

/** Runs the script that a release carries, by plain Node, on a folder of releases. */
export function runVerify(
  script: string,
  folder: string,
  surroundings: Surroundings,
  node = process.execPath,
): Promise<{ code: number; output: string }> {
  return new Promise((resolve) => {
    const environment = { ...surroundings, LANG: surroundings.LC_ALL, PATH: process.env['PATH'] };
    execFile(node, [script, folder], { env: environment, maxBuffer: 1e8 }, (error, stdout, stderr) => {
      resolve({ code: error ? Number(error.code ?? 1) : 0, output: stdout + stderr });
    });
  });
}
