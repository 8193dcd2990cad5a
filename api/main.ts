import type { AddressInfo } from 'node:net';
import { readConfig } from './config.js';
import { createApp } from './create-app.js';
import type { Listening } from './platform/start-up/program.js';

const config = readConfig();
const app = await createApp({ config });
await app.listen(config.PORT, config.HOST);
// Whoever started it waits for this: another program's server may answer at the port that was chosen.
process.send?.({ listeningAt: (app.getHttpServer().address() as AddressInfo).port } satisfies Listening);
