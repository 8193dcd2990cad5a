import { say } from './say.js';
import type { Category } from '../../../api/contract/documents/release-documents.js';

export const comparabilityWords: Record<Category['comparability'], string> = {
  same: say`same method: values may be compared`,
  changed: say`method changed: values may be compared with care`,
  notComparable: say`method changed: values may not be compared`,
  first: say`measured for the first time`,
};
