import { say } from './say.js';
import type { Category } from '../../../api/contract/documents/release-documents.js';

export const comparabilityWords: Record<Category['comparability'], string> = {
  same: say`same method, values may be compared`,
  changed: say`another method, compare values with care`,
  notComparable: say`another method, values may not be compared`,
  first: say`measured for the first time`,
};
