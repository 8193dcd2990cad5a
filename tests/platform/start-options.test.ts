import { readStartOptions } from '../../api/platform/start-up/start-options.js';

test('without wishes: the embedded database, port 3000 or the next free one, the demo', () => {
  expect(readStartOptions([], {})).toMatchObject({
    databaseUrl: undefined,
    host: '127.0.0.1',
    port: 3000,
    isPortFixed: false,
    wantsDemo: true,
  });
});

test('--empty leaves the demo out, PORT is taken at its word', () => {
  expect(readStartOptions(['--empty'], { PORT: '8080', DATABASE_URL: 'postgresql://somewhere/x' })).toMatchObject({
    databaseUrl: 'postgresql://somewhere/x',
    port: 8080,
    isPortFixed: true,
    wantsDemo: false,
  });
});

test('an argument that is not known is named', () => {
  expect(() => readStartOptions(['--emtpy'], {})).toThrow('npm start does not know "--emtpy"');
});

test.each(['0', '70000', 'http', '80.5'])('PORT=%s is refused', (port) => {
  expect(() => readStartOptions([], { PORT: port })).toThrow(`PORT is "${port}"; expected a whole number from 1 to 65535`);
});
