/** A method by its slug, as words: `straight-pull` → `straight pull`. */
export const methodWords = (slug: string): string => slug.replaceAll('-', ' ');
