import type { Category } from '../../../api/contract/documents/release-documents.js';

export const comparabilityWords: Record<Category['comparability'], string> = {
  same: 'same method: values may be compared',
  changed: 'method changed: values may be compared with care',
  notComparable: 'method changed: values may not be compared',
  first: 'measured for the first time',
};
