import { createApp } from 'astro/app/entrypoint';
import { StaticPaths } from 'astro:static-paths';
import type { RouteData } from 'astro';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** A page of the site, or a file that is made as one. */
export interface RenderedPage {
  /** Within its language: `/editions/2026/`, `/feed.xml`. */
  readonly path: string;
  readonly route: RouteData;
}

const { BASE_URL } = import.meta.env;
const NOT_FOUND = '/404/';

// Pages are whole before they are written: handing them on in pieces takes longer.
const app = createApp({ streaming: false });
// A page that fails ends the work; a reader of a server would be shown a page that says so.
app.renderError = (_, { error, status }) => {
  throw error instanceof Error ? error : new Error(`It is answered with status ${status}.`, { cause: error });
};

/** @param site address of the house, with which its pages name themselves */
export const tellAddress = (site: string): void => {
  app.manifest.site = site;
};

/** All pages of the releases, in the order of the routes; of two at one address the first, as the more particular route. */
export async function allPages(): Promise<RenderedPage[]> {
  const pages = new Map<string, RenderedPage>();
  for (const { pathname, route } of await new StaticPaths(app).getAll()) {
    const path = route.type === 'page' ? `${pathname.replace(/\/$/, '')}/` : pathname;
    if (!pages.has(path)) pages.set(path, { path, route });
  }
  return [...pages.values()];
}

/** Whether it is a page to come to: neither a file nor what is shown in place of a page that is not there. */
export const isPage = ({ path, route }: RenderedPage): boolean => route.type === 'page' && path !== NOT_FOUND;

/**
 * Renders a page into its file.
 * @throws Error that names the page
 */
export async function renderPage({ path, route }: RenderedPage, out: string): Promise<void> {
  try {
    const address = new URL(BASE_URL + path.slice(1), app.manifest.site);
    const response = await app.render(new Request(address), { routeData: route });
    const file = join(out, path === NOT_FOUND ? '404.html' : path.endsWith('/') ? `${path}index.html` : path);
    const body = await response.text();
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, body);
  } catch (error) {
    throw new Error(`The page ${path} (${route.component}) cannot be rendered. ${String(error)}`, { cause: error });
  }
}
