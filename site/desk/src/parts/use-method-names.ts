import { methodsResponse } from '../../../../api/contract/endpoints/methods.js';
import { allPages } from '../http/all-pages.js';
import { nameWhenThere } from './name-when-there.js';
import { useLoaded } from './use-loaded.js';

/** What a method is called. */
export function useMethodNames(): (slug: string) => string {
  const methods = useLoaded(() => allPages(methodsResponse, 'catalogue/methods'));
  return nameWhenThere(methods, (all, slug) => all.find((one) => one.slug === slug)?.name);
}
