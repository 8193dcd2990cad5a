import { findIndexOf } from '../release/find-index.js';
import { loadReleases } from '../release/load-releases.js';

/** What the finder looks through, of the newest edition. */
export async function GET(): Promise<Response> {
  const { current } = await loadReleases();
  return Response.json(current[0] ? await findIndexOf(current[0]) : []);
}
