import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const MEDIA_TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.json': 'application/json',
  '.csv': 'text/csv; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
};

/** A server of a folder on the loopback; close it when done. */
export interface FolderServer {
  url: string;
  close: () => Promise<void>;
}

async function find(folders: string[], path: string): Promise<{ bytes: Buffer; name: string } | null> {
  const names = path.endsWith('/') ? [`${path}index.html`] : [path, `${path}.json`];
  for (const folder of folders) {
    for (const name of names) {
      const bytes = await readFile(join(folder, name)).catch(() => null);
      if (bytes) return { bytes, name };
    }
  }
  return null;
}

/** Serves the first of the folders that has the path: `/x/` is `/x/index.html`, and `/v1/releases` is `/v1/releases.json`. */
export async function serveFolders(...folders: string[]): Promise<FolderServer> {
  const server = createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname));
    void find(folders, path).then(async (found) => {
      const missing = found ? null : await find(folders, '/404.html');
      const body = found ?? missing ?? { bytes: Buffer.from('not found'), name: '404.txt' };
      response.writeHead(found ? 200 : 404, { 'content-type': MEDIA_TYPES[extname(body.name)] ?? 'application/octet-stream' });
      response.end(body.bytes);
    });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    close: () => new Promise((resolve, reject) => server.close((error) => (error ? reject(error) : resolve()))),
  };
}
