/**
 * Loads the demo as a program of its own, into the database and folder that the environment names; prints its progress line by line.
 * Run beside the tests rather than in them: inside their sandbox the arithmetic of three seasons takes ten times as long.
 */
import { readConfig } from '../../api/config.js';
import { inventDemo } from '../../prisma/seed/demo.js';
import { loadWithOwnServer } from '../../prisma/seed/loader/with-house-server.js';

await loadWithOwnServer(readConfig(process.env), inventDemo(), (line) => console.log(line));
