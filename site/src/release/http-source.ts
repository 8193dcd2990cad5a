import { once } from 'node:events';
import http, { type IncomingMessage } from 'node:http';
import https from 'node:https';
import type { ReleaseSource } from './release-source.js';

/**
 * A house's API.
 * @param api its address, without a path
 */
export const httpSource = (api: string): ReleaseSource => ({
  async read(path) {
    const address = new URL(path, api);
    const { status, bytes } = await answerOf(address).catch((error: unknown) => {
      throw new Error(`The API does not answer at ${address}. Start it, or set API_URL to where it runs.`, { cause: error });
    });
    if (status === 404) return null;
    if (status !== 200) throw new Error(`${address} answered ${status ?? 'without a status'}; expected 200. Look into the log of the API.`);
    return bytes;
  },
});

/** A build reads tens of thousands of small files, for which the global fetch takes several times as long. */
async function answerOf(address: URL): Promise<{ status: number | undefined; bytes: Uint8Array }> {
  const request = (address.protocol === 'https:' ? https : http).get(address);
  const [answer] = (await once(request, 'response')) as [IncomingMessage];
  const pieces: Buffer[] = [];
  answer.on('data', (piece: Buffer) => pieces.push(piece));
  await once(answer, 'end');
  return { status: answer.statusCode, bytes: Buffer.concat(pieces) };
}
