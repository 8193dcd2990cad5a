import { Inject, Injectable, Logger } from '@nestjs/common';
import { cp, mkdir, readdir, readFile, rename, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import type { ReleaseSummary } from '../../contract/documents/release-documents.js';
import { withDatabaseLock } from '../../platform/database/database-lock.js';
import { Identifiers, sha256 } from '../../platform/identifiers/identifiers.js';
import { CopyOut } from './copy-out.js';
import type { PublishReleaseOrder } from '../publication/release-orders.js';
import { ReleasesReadModel } from '../releases.read-model.js';
import { writeClient } from './run-beside.js';
import { compiledSite, renderSite } from './site-program.js';
import { SiteSource } from './site-source.js';
import type { StandingFault } from '../standing-checks/published-edition.js';
import { EXCEPTIONS_FILE, RunStandingChecks } from '../standing-checks/run-standing-checks.js';
import { digestOfSources } from '../../platform/program/digest-of-sources.js';
import { SOFTWARE_COMMIT, SOFTWARE_VERSION } from '../../platform/program/software-version.js';

/** Version, commit and sources, as a stamp tells them. */
const programIn = (stamp: string): string => stamp.split('\n').slice(0, 3).join('\n');
const inWords = ({ check, where, words }: StandingFault): string => `${where}: ${words} (${check})`;

/** Says, in the built site, from which releases and by which version of the program it was built. */
const STAMP = 'built-from.txt';
/** The client for programs tells of every route. */
const SOURCES = ['site', 'api', 'package-lock.json'];
const DESK = 'site/desk';
const CLIENT = 'client';
const BUILT = 'built-';
/** Beside a site that was built for a release before its time: which that is. */
const AHEAD = '.ahead';
/** A folder that was written to lately may be read from still, or be built by another program. */
const OLD_MS = 3_600_000;

/** Builds the site from the published releases in a folder of its own, then swaps it in at once: readers see the old one or the new one. */
@Injectable()
export class BuildSite {
  private readonly logger = new Logger('site');
  private readonly folder: string;
  private readonly texts: string;

  constructor(
    @Inject(CONFIG) private readonly config: Config,
    private readonly identifiers: Identifiers,
    private readonly releases: ReleasesReadModel,
    private readonly standing: RunStandingChecks,
    private readonly source: SiteSource,
    private readonly copying: CopyOut,
  ) {
    this.folder = resolve(config.DATA_FOLDER, 'site');
    this.texts = config.HOUSE_TEXTS === '' ? '' : resolve(config.HOUSE_TEXTS);
  }

  /**
   * One builder at a time; whoever waited finds the site of its releases built already, and does nothing. Object storage follows.
   * @throws Error naming what is wrong with which release; then the site stays as it is
   */
  async run(): Promise<void> {
    await this.alone(async () => {
      await this.dropCalledOff();
      await this.showNewest();
      await this.copying.run();
    });
  }

  /**
   * Builds what will be shown once these releases are all that is published. Until then it lies beside the site, where no address leads;
   * a release that is called off meanwhile takes it along.
   */
  async ahead({ edition, revision }: PublishReleaseOrder, releases: readonly ReleaseSummary[]): Promise<void> {
    await this.alone(async () => {
      const name = await this.builtOf(releases);
      await writeFile(resolve(this.folder, name + AHEAD), JSON.stringify({ edition, revision }));
      await this.dropCalledOff();
    });
  }

  /** Takes away what was built for a release that there is no more. */
  private async dropCalledOff(): Promise<void> {
    for (const mark of (await this.built()).filter((entry) => entry.endsWith(AHEAD))) {
      const { edition, revision } = JSON.parse(await readFile(resolve(this.folder, mark), 'utf8')) as PublishReleaseOrder;
      if (await this.releases.state(edition, revision)) continue;
      for (const entry of [mark.slice(0, -AHEAD.length), mark]) await rm(resolve(this.folder, entry), { recursive: true, force: true });
    }
  }

  private alone(work: () => Promise<unknown>): Promise<unknown> {
    return withDatabaseLock(this.config.DATABASE_URL, 'build of the site', work);
  }

  private async showNewest(): Promise<void> {
    const releases = await this.releases.list();
    if ((await this.stampIn('current')) === (await this.stampOf(releases))) {
      // The next release need not wait for the compiler.
      for (const language of this.config.SITE_LANGUAGES) await compiledSite(this.config, language);
      return;
    }
    await this.requireStanding();
    const name = await this.builtOf(releases);
    await this.swapIn(name);
    await this.sweep(name);
    this.logger.log(`The site shows ${releases.length} releases.`);
  }

  /** Folder of the site of these releases: one that lies there already, or built now. Its stamp is written last. */
  private async builtOf(releases: readonly ReleaseSummary[]): Promise<string> {
    const stamp = await this.stampOf(releases);
    for (const name of await this.built()) if ((await this.stampIn(name)) === stamp) return name;
    const name = `${BUILT}${this.identifiers.secret().slice(0, 12)}`;
    try {
      await this.build(resolve(this.folder, name), releases, stamp);
    } catch (error) {
      await rm(resolve(this.folder, name), { recursive: true, force: true });
      throw error;
    } finally {
      const beside = (await this.built()).filter((entry) => entry.startsWith(`${name}.`));
      for (const entry of beside) await rm(resolve(this.folder, entry), { recursive: true, force: true });
    }
    return name;
  }

  /** Another version of the program builds another site, from the same releases too. */
  private async stampOf(releases: readonly ReleaseSummary[]): Promise<string> {
    const digests = releases.map(({ digest }) => digest);
    const sources = this.texts === '' ? SOURCES : [...SOURCES, this.texts];
    const program = [SOFTWARE_VERSION, SOFTWARE_COMMIT ?? '', await digestOfSources(sources, DESK)];
    const { PUBLIC_URL, HOUSE_CONTACT, SITE_LANGUAGES } = this.config;
    return [...program, sha256([PUBLIC_URL, HOUSE_CONTACT, String(SITE_LANGUAGES), ...digests].join('\n')), ''].join('\n');
  }

  private async stampIn(name: string): Promise<string | null> {
    return readFile(resolve(this.folder, name, STAMP), 'utf8').catch(() => null);
  }

  private async built(): Promise<string[]> {
    return (await readdir(this.folder).catch(() => [])).filter((entry) => entry.startsWith(BUILT));
  }

  private async requireStanding(): Promise<void> {
    const faults = await this.standing.run();
    if (faults.length === 0) return;
    throw new Error(
      `The site is not built, the one before it stays. ${faults.map(inWords).join(' ')} ` +
        `Run npm run rebuild-files, or restore from a backup what is lost or changed, or let it stand by name in ${EXCEPTIONS_FILE}; then start the worker again.`,
    );
  }

  private async build(target: string, releases: readonly ReleaseSummary[], stamp: string): Promise<void> {
    const source = `${target}.source`;
    await mkdir(target, { recursive: true });
    await this.source.layOut(source, releases);
    // A program that ends while the other is at work would leave that behind.
    const ends = await Promise.allSettled([this.renderAll(target, source), this.layClient(resolve(target, CLIENT), stamp)]);
    for (const end of ends) if (end.status === 'rejected') throw end.reason;
    await writeFile(resolve(target, STAMP), stamp);
  }

  private async renderAll(target: string, source: string): Promise<void> {
    const { PUBLIC_URL, HOUSE_CONTACT, SITE_LANGUAGES } = this.config;
    for (const language of SITE_LANGUAGES) {
      const program = await compiledSite(this.config, language);
      const out = language === SITE_LANGUAGES[0] ? target : resolve(target, language);
      const told = { PUBLIC_URL, HOUSE_CONTACT, RELEASES_FOLDER: source, SITE_OUT: out };
      for (const undone of await renderSite(program, this.config, language, told)) this.logger.warn(undone);
    }
  }

  /** The same program makes the same client, so that what it made for the site that is shown is taken over. */
  private async layClient(target: string, stamp: string): Promise<void> {
    const shown = await this.stampIn('current');
    if (shown !== null && programIn(shown) === programIn(stamp))
      await cp(resolve(this.folder, 'current', CLIENT), target, { recursive: true });
    else await writeClient(target, this.config.PATH);
  }

  private async swapIn(name: string): Promise<void> {
    const next = resolve(this.folder, `${name}.link`);
    await symlink(name, next, 'junction');
    await rename(next, resolve(this.folder, 'current'));
    await rm(resolve(this.folder, name + AHEAD), { force: true });
  }

  /** Takes away sites that were replaced, and builds that were cut off, when they are old. */
  private async sweep(current: string): Promise<void> {
    const others = (await this.built()).filter((entry) => entry !== current);
    for (const entry of others) {
      const changed = await stat(resolve(this.folder, entry)).catch(() => null);
      if (changed && Date.now() - changed.mtimeMs > OLD_MS) await rm(resolve(this.folder, entry), { recursive: true, force: true });
    }
  }
}
