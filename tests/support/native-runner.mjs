// Runs a test file as Node itself loads it. Jest would give each file a sandbox in which the program is read, linked and warmed up anew and
// each look at a global costs: with it the suite takes twice as long. The rest (test, expect, hooks, time limits, reports) is Jest's own.
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import circus from 'jest-circus/runner';

const require = createRequire(import.meta.url);

/** What circus asks of Jest's sandbox, answered by Node. */
const node = {
  requireInternalModule: (path) => requireAnew(path),
  requireModule: require,
  unstable_shouldLoadAsEsm: () => true,
  unstable_importModule: (path) => import(pathToFileURL(path).href),
  setGlobalsForRuntime: () => undefined,
  enterTestCode: () => undefined,
  leaveTestCode: () => undefined,
};

/** What circus knows of tests and hooks is as old as its module. */
function requireAnew(path) {
  delete require.cache[require.resolve(path)];
  return require(path);
}

/** Files of one worker share what the program keeps in modules; what a file made of the environment's variables ends with it, and Jest takes back its spies. */
export default async function runTestFile(globalConfig, config, environment, runtime, path, sendMessageToJest) {
  const variables = { ...process.env };
  // Jest's own way of finding lines knows only what its sandbox transformed; Node reads the maps that the loader leaves.
  Error.prepareStackTrace = undefined;
  Error.stackTraceLimit = 100;
  globalThis.jest = environment.moduleMocker;
  try {
    return await circus.default(globalConfig, config, { ...environment, global: globalThis }, node, path, sendMessageToJest);
  } finally {
    for (const name of Object.keys(process.env)) if (!(name in variables)) delete process.env[name];
    Object.assign(process.env, variables);
  }
}
