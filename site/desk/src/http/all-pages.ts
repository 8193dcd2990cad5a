import type { z } from 'zod';
import { ask } from './ask.js';

interface Page<Item> {
  readonly items: Item[];
  readonly nextCursor: string | null;
}

/** Every item of a list, page by page. */
export async function allPages<Item>(schema: z.ZodType<Page<Item>>, path: string): Promise<Item[]> {
  const items: Item[] = [];
  let cursor: string | null = null;
  do {
    const sign = path.includes('?') ? '&' : '?';
    const page: Page<Item> = await ask(schema, 'GET', cursor === null ? path : `${path}${sign}cursor=${encodeURIComponent(cursor)}`);
    items.push(...page.items);
    cursor = page.nextCursor;
  } while (cursor !== null);
  return items;
}
