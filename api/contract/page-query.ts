/** What every list is asked with: how many, and from where on. */
import { z } from 'zod';

/** Items of a page where nothing else is asked for, and at most. */
const USUAL = 50;
const MOST = 1000;

export const pageLimit = ({ usual = USUAL, most = MOST } = {}) =>
  z.coerce.number().int().min(1).max(most).default(usual).describe('Most items in the answer');

export const pageCursor = z.uuid().optional().describe('nextCursor of the page before');
