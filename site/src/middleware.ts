import type { MiddlewareHandler } from 'astro';
import { ledInto } from './languages/side-by-side.js';
import { figuresOfPage } from './words/figures.js';

/** Published numbers are decimal texts with a point; pages show them as their language writes them, and lead on within it. */
export const onRequest: MiddlewareHandler = async ({ site }, next) => {
  const response = await next();
  const type = response.headers.get('content-type') ?? '';
  if (!/^(?:text|application\/json)/.test(type)) return response;
  const text = await response.text();
  const page = type.startsWith('text/html') ? figuresOfPage(text) : text;
  return new Response(ledInto(import.meta.env.BASE_URL, page, site?.origin), response);
};
