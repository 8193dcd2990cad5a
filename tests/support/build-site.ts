import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { compiledSite, renderSite } from '../../api/releases/site/site-program.js';

/** What a build of the public site is told, and where its files go. */
export interface SiteBuild {
  apiUrl: string;
  publicUrl: string;
  out: string;
  /** English where it is not said. */
  language?: 'en' | 'de';
  /** Those that the house shows its site in, the first its own; the one language where it is not said. */
  languages?: ('en' | 'de')[];
  /** As many as its pages are worth, where it is not said. */
  threads?: number;
}

/** Where the compiled sites of a run of the tests lie, whatever the number of houses. */
export const PROGRAMS_OF_RUN = join(process.env['TEST_RUN_FOLDER'] ?? tmpdir(), 'compiled');

/**
 * Builds the public site as the program does.
 * @returns What it could not draw
 * @throws With what it said, when it fails
 */
export async function buildSite({
  apiUrl,
  publicUrl,
  out,
  language = 'en',
  languages = [language],
  threads,
}: SiteBuild): Promise<string[]> {
  const settings = { DATA_FOLDER: PROGRAMS_OF_RUN, SITE_LANGUAGES: languages, HOUSE_TEXTS: '', PATH: process.env['PATH'] ?? '' };
  const told = { API_URL: apiUrl, PUBLIC_URL: publicUrl, SITE_OUT: out, ...(threads && { RENDER_THREADS: String(threads) }) };
  return renderSite(await compiledSite(settings, language), settings, language, told);
}
