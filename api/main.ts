import { readConfig } from './config.js';
import { createApp } from './create-app.js';
import { LISTENING } from './platform/start-up/program.js';

const config = readConfig();
const app = await createApp({ config });
await app.listen(config.PORT, config.HOST);
// `npm start` waits for this: another program's server may answer at the port that it chose.
process.send?.(LISTENING);
