import { loadReleases } from '../release/load-releases.js';
import { weighedOf } from '../release/weighed-of.js';

/** What the page of own weights weighs, of the newest edition. */
export async function GET(): Promise<Response> {
  const { current } = await loadReleases();
  return Response.json(current[0] ? await weighedOf(current[0]) : []);
}
