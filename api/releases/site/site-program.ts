import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, readdir, rename, rm, stat, utimes } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { Config } from '../../config.js';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import { digestOfSources } from '../../platform/program/digest-of-sources.js';
import { runBeside } from './run-beside.js';

type Settings = Pick<Config, 'DATA_FOLDER' | 'SITE_LANGUAGES' | 'HOUSE_TEXTS' | 'PATH'>;

const PROGRAMS = 'site/programs';
/** What the pages are compiled from; the figures of a release are no part of it. */
const SOURCES = ['site', 'api/contract', 'api/measurement', 'package-lock.json'];
const DESK = 'site/desk';
/** An image brings what was compiled while it was made; nobody writes there. */
export const IN_IMAGE = 'shipped';
/** The house's own words, in the folder of its texts. */
const WORDS = 'words.json';
/** One that no build has used for so long is of an older version, or was cut off while it was compiled. */
const OLD_MS = 3_600_000;

/**
 * Compiles the site in a language, where that has not been done: a program of these sources renders every release.
 * @returns its folder
 * @throws Error with the end of what the compiler said
 */
export async function compiledSite(settings: Settings, language: string): Promise<string> {
  const digest = await digestOf(settings, language);
  const shipped = resolve(IN_IMAGE, PROGRAMS, digest);
  if (existsSync(shipped)) return shipped;
  const folder = resolve(settings.DATA_FOLDER, PROGRAMS);
  const program = join(folder, digest);
  if (!existsSync(program)) await compile(folder, program, settings, language);
  const now = new Date();
  await utimes(program, now, now);
  return program;
}

/**
 * Renders the site in a language.
 * @param program as it was compiled
 * @param env all that it is told beside its texts: the releases, the house, where the pages go
 * @returns what it could not do and went on without, a line each
 * @throws Error with the end of what it said
 */
export async function renderSite(
  program: string,
  settings: Settings,
  language: string,
  env: Readonly<Record<string, string>>,
): Promise<string[]> {
  const own = { SITE_LANGUAGES: String(settings.SITE_LANGUAGES), HOUSE_TEXTS: textsIn(settings, language) };
  const said = await runBeside([join(program, 'pages/prerender-entry.mjs')], { ...surroundings(settings), ...own, ...env });
  return said.split('\n').filter((line) => line.startsWith('Not drawn: '));
}

// A container has no home, in which it would be kept whether Astro may call its own.
const surroundings = ({ PATH }: Settings) => ({ PATH, NODE_ENV: 'production', ASTRO_TELEMETRY_DISABLED: '1' });
const isFirst = ({ SITE_LANGUAGES }: Settings, language: string): boolean => language === SITE_LANGUAGES[0];

/** Folder of the house's own words and pages; of a language below the root one within it, none without. */
function textsIn(settings: Settings, language: string): string {
  if (settings.HOUSE_TEXTS === '') return '';
  const texts = resolve(settings.HOUSE_TEXTS);
  if (isFirst(settings, language)) return texts;
  return existsSync(join(texts, language)) ? join(texts, language) : '';
}

async function digestOf(settings: Settings, language: string): Promise<string> {
  const words = join(textsIn(settings, language), WORDS);
  const sources = textsIn(settings, language) !== '' && existsSync(words) ? [...SOURCES, words] : SOURCES;
  return sha256([language, String(isFirst(settings, language)), await digestOfSources(sources, DESK)].join('\n'));
}

/** Beside those that are whole: what breaks off has another name, and of two that compile the same one comes first. */
async function compile(folder: string, program: string, settings: Settings, language: string): Promise<void> {
  const half = join(folder, `half-${randomUUID().slice(0, 8)}`);
  await mkdir(half, { recursive: true });
  const told = { SITE_PROGRAM: half, SITE_LANGUAGE: language, SITE_LANGUAGES: String(settings.SITE_LANGUAGES) };
  try {
    await runBeside(['node_modules/astro/bin/astro.mjs', 'build', '--root', resolve('site'), '--logLevel', 'warn'], {
      ...surroundings(settings),
      ...told,
      HOUSE_TEXTS: textsIn(settings, language),
    });
    await rm(join(half, 'cache'), { recursive: true, force: true });
    await rename(half, program).catch((error: unknown) => {
      if (!existsSync(program)) throw error;
    });
  } finally {
    await rm(half, { recursive: true, force: true });
  }
  await sweep(folder);
}

async function sweep(folder: string): Promise<void> {
  for (const entry of await readdir(folder)) {
    const used = await stat(join(folder, entry)).catch(() => null);
    if (used && Date.now() - used.mtimeMs > OLD_MS) await rm(join(folder, entry), { recursive: true, force: true });
  }
}
