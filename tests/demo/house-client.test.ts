import { once } from 'node:events';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { HouseClient } from '../../prisma/seed/loader/house-client.js';

test('a house that asks for a moment is asked again, by what only reads', async () => {
  const asked: string[] = [];
  const house = createServer(({ method, url }, answer) => {
    asked.push(`${method} ${url}`);
    if (asked.length % 2 === 1) answer.writeHead(503, { 'Retry-After': '1' }).end('not ready');
    else answer.end('{"state":"published"}');
  }).listen(0, '127.0.0.1');
  await once(house, 'listening');
  const stranger = HouseClient.stranger(`http://127.0.0.1:${(house.address() as AddressInfo).port}`);
  expect(await stranger.get('/v1/releases')).toEqual({ state: 'published' });
  await expect(stranger.post('/v1/releases')).rejects.toThrow('was answered by 503: not ready');
  house.close();
  expect(asked).toEqual(['GET /v1/releases', 'GET /v1/releases', 'POST /v1/releases']);
});
