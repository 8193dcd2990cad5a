import { readConfig } from './config.js';
import { createApp } from './create-app.js';

const config = readConfig();
const app = await createApp({ config });
await app.listen(config.PORT, config.HOST);
