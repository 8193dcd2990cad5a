import { scaleLinear } from 'd3-scale';
import type { CategoryDocument } from '../../../api/contract/documents/release-documents.js';
import { once } from './once.js';

/** How a value is drawn within its category, from the worst, at the left, to the best; and how many have a place in it. */
export const drawnIn = once(({ category, rows }: CategoryDocument) => {
  const numbers = rows.map(({ figure }) => Number(figure.value));
  const ends = [Math.min(...numbers), Math.max(...numbers)];
  const scale = scaleLinear(category.direction === 'more' ? ends : ends.toReversed(), [3, 97]).clamp(true);
  return { scale, placed: rows.filter(({ place }) => place !== null).length };
});
