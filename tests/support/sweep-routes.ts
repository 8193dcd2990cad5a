/** Every route of the program, asked by a tester who wants to know what is on a spool: by token, and by the session of the desk. */
import { ROUTES } from '../rules/route-table.js';
import { own } from './dishonest-script.js';
import type { Step } from './dishonest-script.js';
import type { HouseOfTwo } from './two-houses.js';
import type { Method } from './test-application.js';

/** Routes that are not asked, and why. */
export const NOT_ASKED: Readonly<Record<string, string>> = {
  'DELETE /v1/sessions': 'ends what the play goes on with',
  'DELETE /v1/sessions/current': 'ends what the play goes on with',
  'GET /metrics': 'tells of times and of memory',
  'GET /health/ready': 'tells of times',
};

/** The route with what a tester knows: the code of the spool, an own submission, and the names that stand in the catalogue. */
const addressOf = (path: string, { spool }: HouseOfTwo, reference: string): string =>
  path
    .replace('spools/:code', `spools/${spool}`)
    .replace('variants/:slug', 'variants/sought-1')
    .replace('lines/:slug', 'lines/sought')
    .replace('makers/:slug', 'makers/far-shoal')
    .replace('methods/:slug', 'methods/straight-pull')
    .replace('round-robins/:slug', 'round-robins/spring')
    .replace(/:variant\b/, 'sought-1')
    .replace(/:edition\b/, '2026')
    .replace(/:reference\b/, reference)
    .replace(/:(code|slug)\b/, 'R1')
    .replace(/:(number|revision|specimen)\b/, '1')
    .replace(/:(category|quantity)\b/, 'breakingForce')
    .replace(/:method\b/, 'straight-pull')
    .replace(/:certificate\b/, 'C-R1')
    .replace(/:\w+/g, '00000000-0000-7000-8000-000000000000')
    .replace('*', 'bundle.json');

export function sweepRoutes(): Step[] {
  return ROUTES.filter(([route]) => !(route in NOT_ASKED)).flatMap(([route]): Step[] => {
    const [verb = '', path = ''] = route.split(' ');
    const method = verb.toLowerCase() as Method;
    const ask =
      (way: 'call' | 'browse', query = ''): Step[1] =>
      (house, seen) => {
        const asked = house.cheat[way](method, addressOf(path, house, own(seen, 'day 2')) + query);
        return method === 'get' ? asked : asked.set('If-Match', '"999"').send({});
      };
    return method === 'get'
      ? [
          [route, ask('call')],
          [route, ask('browse', '?limit=200')],
        ]
      : [[route, ask('browse')]];
  });
}
