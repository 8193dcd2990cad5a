/** Builds the site in a process of its own. Loading the program that builds takes a while: it is loaded first, and builds once it is told of what. */
import { build } from 'astro';
import { resolve } from 'node:path';
import { text } from 'node:stream/consumers';

/** The environment of the build as JSON; nothing when it is not wanted after all. */
const told = await text(process.stdin);
if (told !== '') {
  Object.assign(process.env, JSON.parse(told));
  await build({ root: resolve('site') });
}
