/** A name → its short name for addresses: "Quaymade 8" → "quaymade-8". */
export const toSlug = (name: string): string =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
