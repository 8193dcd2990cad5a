/** How a line is made. */
export const CONSTRUCTIONS = ['braided', 'fused', 'hollowCore', 'twisted', 'monofilament'] as const;
export type Construction = (typeof CONSTRUCTIONS)[number];
