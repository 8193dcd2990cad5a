import { createServer } from 'node:net';

const LAST_PORT = 65_535;

/**
 * A TCP port of the loopback address that nobody listens on at this moment.
 * @param from first port to try, then upwards; 0 lets the operating system choose
 * @throws Error when no port from `from` upwards is free
 */
export async function findFreePort(from = 0): Promise<number> {
  for (let port = from; port <= LAST_PORT; port += 1) {
    const found = await tryToListen(port);
    if (found !== undefined) return found;
  }
  throw new Error(`No free port on 127.0.0.1 from ${from} upwards. Stop a program that listens there, or set PORT to a lower number.`);
}

function tryToListen(port: number): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE' || error.code === 'EACCES') resolve(undefined);
      else reject(error);
    });
    server.listen(port, '127.0.0.1', () => {
      const address = server.address();
      const found = typeof address === 'object' && address !== null ? address.port : port;
      server.close(() => {
        resolve(found);
      });
    });
  });
}
