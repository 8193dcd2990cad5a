/** What has codes as `releases/erratum-needed`, by the first part of these: kinds in the order in which they come first. */
export function ofFirstParts<T extends { readonly code: string }>(all: readonly T[]): { kind: string; entries: T[] }[] {
  const kinds = Map.groupBy(all, ({ code }) => code.split('/')[0] ?? code);
  return [...kinds].map(([kind, entries]) => ({ kind, entries }));
}
