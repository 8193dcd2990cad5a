import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Where a house keeps its own pages, in the folder of its texts. */
const PAGES = 'pages';

/** What a house has written in place of a page: `pages/read/testing.html` for `/read/testing/`. @param folder none where it has no texts */
export function ownPage(folder: string, path: string): string | undefined {
  const file = join(folder, PAGES, `${path.replace(/\/$/, '')}.html`);
  return folder !== '' && existsSync(file) ? readFileSync(file, 'utf8') : undefined;
}

/** Paths of the pages that a house has written itself. */
export function ownPages(folder: string): string[] {
  if (folder === '' || !existsSync(join(folder, PAGES))) return [];
  const files = readdirSync(join(folder, PAGES), { recursive: true, encoding: 'utf8' });
  return files.filter((file) => file.endsWith('.html')).map((file) => `/${file.replaceAll('\\', '/').replace(/\.html$/, '')}/`);
}
