import { Inject, Injectable, Logger } from '@nestjs/common';
import { spawn } from 'node:child_process';
import { mkdir, readdir, readFile, rename, rm, symlink, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import { Identifiers, sha256 } from '../platform/identifiers/identifiers.js';
import { ReleasesReadModel } from './releases.read-model.js';
import type { StandingFault } from './standing-checks/published-edition.js';
import { RunStandingChecks } from './standing-checks/run-standing-checks.js';
import { SOFTWARE_VERSION } from './software-version.js';

const inWords = ({ check, where, words }: StandingFault): string => `${where}: ${words} (${check})`;

/** Says, in the built site, from which releases and by which version of the program it was built. */
const STAMP = 'built-from.txt';

/** Builds the site from the published releases in a folder of its own, then swaps it in at once: readers see the old one or the new one. */
@Injectable()
export class BuildSite {
  private readonly logger = new Logger('site');
  private readonly folder: string;

  constructor(
    @Inject(CONFIG) private readonly config: Config,
    private readonly identifiers: Identifiers,
    private readonly releases: ReleasesReadModel,
    private readonly standing: RunStandingChecks,
  ) {
    this.folder = resolve(config.DATA_FOLDER, 'site');
  }

  /** Does nothing when the current site is built from these very releases already. */
  async run(): Promise<void> {
    const digests = (await this.releases.list()).map(({ digest }) => digest);
    const stamp = sha256([SOFTWARE_VERSION, this.config.PUBLIC_URL, ...digests].join('\n'));
    if ((await this.currentStamp()) === stamp) return;
    const faults = await this.standing.run();
    if (faults.length > 0) throw new Error(`The site is not built: ${faults.map(inWords).join(' ')}`);
    const name = `built-${this.identifiers.secret().slice(0, 12)}`;
    const target = resolve(this.folder, name);
    await mkdir(target, { recursive: true });
    try {
      await this.astro(target);
    } catch (error) {
      await rm(target, { recursive: true, force: true });
      throw error;
    }
    await writeFile(resolve(target, STAMP), stamp);
    await this.swapIn(name);
    this.logger.log(`The site shows ${digests.length} releases.`);
  }

  private async currentStamp(): Promise<string | null> {
    return readFile(resolve(this.folder, 'current', STAMP), 'utf8').catch(() => null);
  }

  private astro(target: string): Promise<void> {
    const { API_URL, PUBLIC_URL, HOUSE_CONTACT } = this.config;
    const env = {
      PATH: this.config.PATH,
      API_URL,
      PUBLIC_URL,
      HOUSE_CONTACT,
      SITE_OUT: target,
      ASTRO_TELEMETRY_DISABLED: '1',
      NODE_ENV: 'production',
    };
    return new Promise((done, fail) => {
      const child = spawn(process.execPath, ['node_modules/astro/bin/astro.mjs', 'build', '--root', 'site'], {
        env,
        stdio: ['ignore', 'ignore', 'pipe'],
      });
      let said = '';
      child.stderr.on('data', (chunk: Buffer) => (said = (said + chunk.toString()).slice(-4000)));
      child.on('error', fail);
      child.on('exit', (code) => (code === 0 ? done() : fail(new Error(`The site's build ended with code ${String(code)}. ${said}`))));
    });
  }

  private async swapIn(name: string): Promise<void> {
    const next = resolve(this.folder, `${name}.link`);
    await symlink(name, next, 'junction');
    await rename(next, resolve(this.folder, 'current'));
    const others = (await readdir(this.folder)).filter((entry) => entry.startsWith('built-') && !entry.startsWith(name));
    await Promise.all([...others, `${name}.cache`].map((entry) => rm(resolve(this.folder, entry), { recursive: true, force: true })));
  }
}
