// One variant over the years. Beside it lie fairpull.mjs and fairpull.d.mts, from /client/.
import { fairpull } from './fairpull.mjs';

const [, , address = 'http://127.0.0.1:3000', wanted] = process.argv;
const api = fairpull(address);
const lines = await api.GET('/v1/lines');
const variant = wanted ?? lines.data?.items[0]?.variants[0]?.slug ?? '';
const { data, error } = await api.GET('/v1/variants/{variant}/history', { params: { path: { variant } } });
if (!data) throw new Error(error?.detail ?? 'No answer');
for (const { edition, categories } of data.history)
  for (const { code, place } of categories) process.stdout.write(`${variant} ${edition} ${code} ${place ?? 'not placed'}\n`);
