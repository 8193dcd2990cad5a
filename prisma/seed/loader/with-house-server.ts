import 'reflect-metadata';
import type { AddressInfo } from 'node:net';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { AccountsModule } from '../../../api/accounts/accounts.module.js';
import { Invite } from '../../../api/accounts/invite.js';
import type { Config } from '../../../api/config.js';
import { createApp } from '../../../api/create-app.js';
import { ReleasesModule } from '../../../api/releases/releases.module.js';
import { BuildSite } from '../../../api/releases/site/build-site.js';
import { ReleaseWork } from '../../../api/releases/publication/release-work.js';
import type { Demo } from '../demo.js';
import { FOUNDED_ON, loadHouse } from './load-house.js';
import type { Beside } from './load-house.js';
import { SeasonClock } from './season-clock.js';
import { SeasonIdentifiers } from './season-identifiers.js';

/**
 * Loads the demo into an empty, migrated database through a server of its own on a free loopback port, whose clock the seasons move.
 * Releases are carried out here too, so that they bear the dates of their seasons. With the site it is built of the first edition, as soon as
 * there is one, and of all.
 * @param config of the house; nobody but the loader calls this server, so its limit of requests is out of the way
 * @throws Error when a request is not answered as it should be
 */
export async function loadWithOwnServer(
  config: Config,
  demo: Demo,
  progress: (line: string) => void,
  { withSite = false, ...beside }: Beside & { readonly withSite?: boolean } = {},
): Promise<void> {
  const clock = new SeasonClock(FOUNDED_ON);
  const app = await createApp({
    config: { ...config, REQUESTS_PER_MINUTE: Number.MAX_SAFE_INTEGER },
    clock,
    identifiers: new SeasonIdentifiers(demo.seed),
  });
  try {
    await app.listen(0, '127.0.0.1');
    await app.select(ReleasesModule).get(ReleaseWork).start(false);
    const { port } = app.getHttpServer().address() as AddressInfo;
    const site = app.select(ReleasesModule).get(BuildSite);
    // That it cannot be shown yet does not keep the others from being loaded.
    const showFirst = () =>
      site.run().then(
        () => progress(`The first edition is shown at ${config.PUBLIC_URL}/`),
        (error: unknown) => progress((error as Error).message),
      );
    const house = { url: `http://127.0.0.1:${port}`, clock, ...(withSite && { showFirst }) };
    // The accounts come with the first winter that is laid.
    const firstInvitation = beside.lay ? null : await inviteFirst(app);
    await loadHouse({ ...house, firstInvitation }, demo, progress, beside);
    if (!withSite) return;
    await site.run();
    progress('The site shows all editions');
  } finally {
    await app.close();
  }
}

async function inviteFirst(app: NestFastifyApplication): Promise<string> {
  const invite = app.select(AccountsModule).get(Invite);
  return (await invite.run(null, { roles: ['admin'], note: 'First admin of the North Quay Line Trials' })).secret;
}
