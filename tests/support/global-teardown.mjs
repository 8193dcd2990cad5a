/** After all tests: the server and its data go. */
export default async function globalTeardown() {
  await globalThis.testServer?.stop();
}
