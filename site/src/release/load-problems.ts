import { z } from 'zod';
import { fetchBytes } from './fetch-bytes.js';

const problemsSchema = z.object({
  items: z.array(z.object({ code: z.string(), status: z.int(), title: z.string(), explains: z.string() })),
});

/** The catalogue of API errors; empty when the API has none. */
export async function loadProblems(): Promise<z.infer<typeof problemsSchema>['items']> {
  const bytes = await fetchBytes('/v1/problems');
  return bytes ? problemsSchema.parse(JSON.parse(new TextDecoder().decode(bytes))).items : [];
}
