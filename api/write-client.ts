/** `node … api/write-client.ts <folder>`: writes the client for programs, made from the description of this very program. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describeAlone } from './describe-alone.js';
import { typedClient } from './openapi/typed-client.js';

const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error('Name the folder that the client goes to.');
// Where a house listens stands in no type.
const { module, types } = await typedClient(await describeAlone('https://results.example'));
await mkdir(folder, { recursive: true });
await writeFile(join(folder, 'fairpull.mjs'), module);
await writeFile(join(folder, 'fairpull.d.mts'), types);
