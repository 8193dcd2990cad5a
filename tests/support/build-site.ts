import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** What a build of the public site is told, and where its files go. */
export interface SiteBuild {
  apiUrl: string;
  publicUrl: string;
  out: string;
  /** English where it is not said. */
  language?: string;
  /** Those that the house shows its site in, the first its own; the one language where it is not said. */
  languages?: string;
}

/**
 * Builds the public site as the program does.
 * @returns What the build printed
 * @throws With what it printed, when it fails
 */
export function buildSite({ apiUrl, publicUrl, out, language = 'en', languages = language }: SiteBuild): Promise<string> {
  const env = {
    ...process.env,
    NODE_OPTIONS: '',
    NODE_ENV: 'production',
    ASTRO_TELEMETRY_DISABLED: '1',
    API_URL: apiUrl,
    PUBLIC_URL: publicUrl,
    SITE_OUT: out,
    SITE_LANGUAGE: language,
    SITE_LANGUAGES: languages,
  };
  const args = [join(ROOT, 'node_modules/astro/bin/astro.mjs'), 'build', '--root', join(ROOT, 'site')];
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, args, { cwd: ROOT, env, stdio: ['ignore', 'pipe', 'pipe'] });
    let printed = '';
    child.stdout.on('data', (chunk: Buffer) => (printed += chunk.toString()));
    child.stderr.on('data', (chunk: Buffer) => (printed += chunk.toString()));
    child.on('error', reject);
    child.on('close', (code) =>
      code === 0 ? resolve(printed) : reject(new Error(`The build of the site ended with ${code}:\n${printed.slice(-4000)}`)),
    );
  });
}
