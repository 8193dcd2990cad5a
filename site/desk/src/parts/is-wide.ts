/** Whether lists and tables fit beside one another; a phone opens what is wanted. */
export const isWide = (): boolean => window.matchMedia('(min-width: 48rem)').matches;
