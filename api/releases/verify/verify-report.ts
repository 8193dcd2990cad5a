import { isAddition } from './differences.js';
import type { Difference } from './differences.js';
import { releasesAt } from './release-source.js';
import { chainFaults } from './verify-chain.js';
import type { ReleaseSource, Verdict } from './verify-release.js';

const MOST_SHOWN = 50;

/** A verdict, and whether the program inside the release was run because it is another than this one. */
export interface ReportedVerdict extends Verdict {
  readonly isByOwnProgram?: boolean;
}

const show = ({ file, where, found, expected }: Difference): string =>
  `  ${file}${where === '' ? '' : ` ${where}`}: found ${found}; expected ${expected}`;

const say = (line: string): boolean => process.stdout.write(`${line}\n`);

/**
 * Verifies the releases at a place and prints what was found.
 * @returns 0 when all is equal, 1 when anything differs, 2 when something was not recomputed
 */
export async function reportOn(place: string, verify: (source: ReleaseSource) => Promise<ReportedVerdict>): Promise<number> {
  const verdicts: ReportedVerdict[] = [];
  for (const source of await releasesAt(place)) {
    const verdict = await verify(source);
    verdicts.push(verdict);
    say(`${verdict.edition}, revision ${verdict.revision} (${verdict.name})`);
    say(`  digest ${verdict.digest}`);
    say(`  signed by the key ${verdict.keyFingerprint ?? 'of nobody'}`);
    for (const line of linesOnProgram(verdict)) say(`  ${line}`);
  }
  const differences = [...verdicts.flatMap((verdict) => verdict.differences), ...chainFaults(verdicts)];
  const figures = verdicts.reduce((sum, verdict) => sum + (verdict.figures ?? 0), 0);
  const files = verdicts.reduce((sum, verdict) => sum + verdict.files, 0);
  if (differences.length === 0) {
    say(`${figures} figures recomputed, all equal; ${files} files, every one as signed.`);
    return verdicts.some(isNotRecomputed) ? 2 : 0;
  }
  say(`${figures} figures recomputed; ${differences.length} differences:`);
  for (const difference of differences.slice(0, MOST_SHOWN)) say(show(difference));
  if (differences.length > MOST_SHOWN) say(`  … and ${differences.length - MOST_SHOWN} more`);
  return 1;
}

const isNotRecomputed = ({ figures, isByOwnProgram }: ReportedVerdict): boolean => figures === null && isByOwnProgram !== true;

function linesOnProgram(verdict: ReportedVerdict): string[] {
  if (isNotRecomputed(verdict))
    return ['NOT recomputed: it is of another format than this program computes. Run the verify.mjs that lies in it.'];
  const additions = verdict.otherwise.filter(isAddition).length;
  const changes = verdict.otherwise.length - additions;
  return [
    ...(verdict.isByOwnProgram ? ['recomputed by the program that lies in it'] : []),
    ...(additions > 0 ? [`this program computes ${additions} values more than the one that published it`] : []),
    ...(changes > 0 ? [`this program computes ${changes} values otherwise than the one that published it`] : []),
  ];
}

/** Runs a report; what stands in its way is printed, and gives 2. */
export async function saying(report: () => Promise<number>): Promise<number> {
  return report().catch((error: unknown) => {
    say(error instanceof Error ? error.message : String(error));
    return 2;
  });
}
