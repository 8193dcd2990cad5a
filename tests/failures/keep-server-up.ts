/** A program for the fault tests: keeps the embedded server of a folder up until it is told to end, or killed. */
import { startEmbeddedPostgres } from '../../api/platform/embedded-postgres/start-embedded-postgres.js';

const server = await startEmbeddedPostgres(process.argv[2] ?? '');
process.on('SIGTERM', () => {
  void server.stop().then(() => process.exit(0));
});
setInterval(() => undefined, 1000);
console.log(server.url);
