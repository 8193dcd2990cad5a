import { createHash } from 'node:crypto';
import type { RetestsDocument } from '../../../api/contract/documents/retests-document.js';

const again = (
  original: string,
  variant: string,
  first: string,
  second: string,
  differencePercent: string,
): RetestsDocument['pairs'][number] => ({
  original,
  again: `${original}9`,
  variant,
  method: 'straight-pull',
  first,
  second,
  unit: 'N',
  differencePercent,
});

/** A draw of two, both tested again. */
export const inventedRetests = (): Pick<RetestsDocument, 'draw' | 'pairs' | 'reproducibility'> => ({
  draw: { seed: createHash('sha256').update('invented').digest('hex'), percent: '10', from: ['S-1', 'S-2', 'S-3'], drawnOn: '2026-01-20' },
  pairs: [again('S-2', 'invented-one', '88.4', '90.1', '1.9'), again('S-3', 'invented-two', '61.0', '60.2', '-1.3')],
  reproducibility: [{ method: 'straight-pull', pairs: 2, relativePercent: '1.2', low: '0.6', high: '7.4' }],
});
