import type { MiddlewareHandler } from 'astro';
import { figuresOfPage } from './words/figures.js';

/** Published numbers are decimal texts with a point; pages show them as their language writes them. */
export const onRequest: MiddlewareHandler = async (_, next) => {
  const response = await next();
  if (!response.headers.get('content-type')?.startsWith('text/html')) return response;
  return new Response(figuresOfPage(await response.text()), response);
};
