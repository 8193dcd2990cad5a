import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const folder = (): string => (process.env['HOUSE_TEXTS'] ? join(process.env['HOUSE_TEXTS'], 'pages') : '');

/** What a house has written in place of a page: `pages/read/testing.html` for `/read/testing/`. */
export function ownPage(path: string): string | undefined {
  const file = join(folder(), `${path.replace(/\/$/, '')}.html`);
  return folder() !== '' && existsSync(file) ? readFileSync(file, 'utf8') : undefined;
}

/** Paths of the pages that a house has written itself. */
export function ownPages(): string[] {
  if (folder() === '' || !existsSync(folder())) return [];
  const files = readdirSync(folder(), { recursive: true, encoding: 'utf8' });
  return files.filter((file) => file.endsWith('.html')).map((file) => `/${file.replaceAll('\\', '/').replace(/\.html$/, '')}/`);
}
