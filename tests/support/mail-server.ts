/** A mail server (SMTP, RFC 5321) that keeps what it is handed. */
import { createServer } from 'node:net';
import type { AddressInfo } from 'node:net';

export interface MailServer {
  readonly url: string;
  /** The next letter; waits for it. */
  letter(): Promise<string>;
  readonly taken: number;
  close(): Promise<void>;
}

export async function startMailServer(): Promise<MailServer> {
  const letters: string[] = [];
  const waiting: ((text: string) => void)[] = [];
  let taken = 0;
  const server = createServer((socket) => {
    let data: string[] | null = null;
    let rest = '';
    socket.write('220 mail.example\r\n');
    socket.on('data', (chunk) => {
      const lines = (rest + chunk.toString()).split('\r\n');
      rest = lines.pop() ?? '';
      for (const line of lines) {
        if (data && line !== '.') data.push(line);
        else if (data) {
          // Quoted-printable, RFC 2045 section 6.7: a soft break ends with "=".
          const text = data.join('\n').replaceAll('=\n', '').replaceAll('=3D', '=');
          data = null;
          taken += 1;
          const next = waiting.shift();
          if (next) next(text);
          else letters.push(text);
          socket.write('250 taken\r\n');
        } else if (/^DATA/i.test(line)) {
          data = [];
          socket.write('354 go on\r\n');
        } else if (/^QUIT/i.test(line)) socket.end('221 bye\r\n');
        else socket.write('250 ok\r\n');
      }
    });
    socket.on('error', () => socket.destroy());
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    url: `smtp://127.0.0.1:${(server.address() as AddressInfo).port}`,
    letter: () => {
      const text = letters.shift();
      return text === undefined ? new Promise((resolve) => waiting.push(resolve)) : Promise.resolve(text);
    },
    get taken() {
      return taken;
    },
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
}
