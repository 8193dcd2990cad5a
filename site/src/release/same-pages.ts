import { copyFile, link, mkdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';

interface SamePage {
  /** Address of the page or picture that is rendered. */
  readonly of: string;
  /** Second address of the same page. */
  readonly at: string;
}

const AT_ONCE = 16;

const told: SamePage[] = [];

/** Says that a page stands at two addresses, so that it is rendered once. */
export const tellSamePage = (page: SamePage): void => void told.push(page);

/** Says that a page of a current revision stands at the address of its revision too, where it stays when another follows. */
export function tellRevisionPage(
  { edition, revision }: { edition: string; revision: number },
  below = '',
  of = `/editions/${edition}/${below}`,
): void {
  if (import.meta.env.PROD) tellSamePage({ of, at: `/editions/${edition}/revisions/${revision}/${below}` });
}

/** Gives pages that stand at two addresses their second one when all are rendered: one file under two names, or a copy where the disk knows no such thing. */
export async function nameSamePages(folder: string): Promise<void> {
  const fileOf = (address: string) => join(folder, address.endsWith('/') ? `${address}index.html` : address);
  const name = async ({ of, at }: SamePage) => {
    await mkdir(dirname(fileOf(at)), { recursive: true });
    await link(fileOf(of), fileOf(at)).catch(() => copyFile(fileOf(of), fileOf(at)));
  };
  while (told.length > 0) await Promise.all(told.splice(-AT_ONCE).map(name));
}
