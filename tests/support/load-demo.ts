/**
 * Loads the demo into the database and folder that the environment names; prints its progress line by line.
 * A program of its own, as its user starts it: what three seasons need of memory goes with it.
 */
import { readConfig } from '../../api/config.js';
import { inventDemo } from '../../prisma/seed/demo.js';
import { loadWithOwnServer } from '../../prisma/seed/loader/with-house-server.js';

await loadWithOwnServer(readConfig(process.env), inventDemo(), (line) => console.log(line));
