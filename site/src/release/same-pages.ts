import type { AstroIntegration } from 'astro';
import { channel } from 'node:diagnostics_channel';
import { copyFile, link, mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';

interface SamePage {
  /** Address of the page or picture that is rendered. */
  readonly of: string;
  /** Second address of the same page. */
  readonly at: string;
}

const AT_ONCE = 16;

// Pages are rendered from a bundle, whose modules are not those of the configuration; they meet in a channel of the process.
const told = channel('same-page');

/** Says that a page stands at two addresses, so that it is rendered once. */
export const tellSamePage = (page: SamePage): void => told.publish(page);

/** Says that a page of a current revision stands at the address of its revision too, where it stays when another follows. */
export function tellRevisionPage(
  { edition, revision }: { edition: string; revision: number },
  below = '',
  of = `/editions/${edition}/${below}`,
): void {
  if (import.meta.env.PROD) tellSamePage({ of, at: `/editions/${edition}/revisions/${revision}/${below}` });
}

/** Gives pages that stand at two addresses their second one when all are rendered: one file under two names, or a copy where the disk knows no such thing. */
export function samePages(): AstroIntegration {
  const pages: SamePage[] = [];
  told.subscribe((page) => pages.push(page as SamePage));
  return {
    name: 'same-pages',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const fileOf = (address: string) => fileURLToPath(new URL(`.${address}${address.endsWith('/') ? 'index.html' : ''}`, dir));
        const name = async ({ of, at }: SamePage) => {
          await mkdir(dirname(fileOf(at)), { recursive: true });
          await link(fileOf(of), fileOf(at)).catch(() => copyFile(fileOf(of), fileOf(at)));
        };
        while (pages.length > 0) await Promise.all(pages.splice(-AT_ONCE).map(name));
      },
    },
  };
}
