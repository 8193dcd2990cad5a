import { methodsResponse } from '../../../../api/contract/endpoints/methods.js';
import { allPages } from '../http/all-pages.js';
import { useLoaded } from './use-loaded.js';

/** What a method is called; its short name until the answer is there. */
export function useMethodNames(): (slug: string) => string {
  const methods = useLoaded(() => allPages(methodsResponse, 'catalogue/methods'));
  return (slug) => methods.answer?.find((one) => one.slug === slug)?.name ?? slug;
}
