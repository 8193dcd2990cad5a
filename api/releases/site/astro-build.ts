import { Inject, Injectable } from '@nestjs/common';
import type { OnApplicationShutdown } from '@nestjs/common';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import { runBeside } from './run-beside.js';
import type { OwnProcess } from './run-beside.js';

/** The program that builds the pages of the site. Loading it takes as long as computing a release of a hundred entries, and both can go on at once. */
@Injectable()
export class AstroBuild implements OnApplicationShutdown {
  private loaded: OwnProcess | undefined;

  constructor(@Inject(CONFIG) private readonly config: Config) {}

  /** Loads it for the build that is to come. */
  makeReady(): void {
    this.loaded ??= this.load();
  }

  /** Ends what was loaded and is not wanted. */
  forget(): void {
    this.loaded?.stdin.end();
    this.loaded = undefined;
  }

  onApplicationShutdown(): void {
    this.forget();
  }

  /**
   * @param env all that the build is told
   * @returns what it could not do and went on without, a line each
   * @throws Error with the end of what the build said
   */
  async run(env: Readonly<Record<string, string>>): Promise<string[]> {
    const { stdin, said } = this.loaded ?? this.load();
    this.loaded = undefined;
    stdin.end(JSON.stringify(env));
    return (await said).split('\n').filter((line) => line.startsWith('Not drawn: '));
  }

  private load(): OwnProcess {
    // Told before it loads: whether it may call home is read once, and is kept in a home that a container has not.
    const env = { PATH: this.config.PATH, NODE_ENV: 'production', ASTRO_TELEMETRY_DISABLED: '1' };
    const beside = runBeside(['site/build-when-told.mjs'], env);
    const isGone = () => {
      if (this.loaded === beside) this.loaded = undefined;
    };
    beside.said.then(isGone, isGone);
    return beside;
  }
}
