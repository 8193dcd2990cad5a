/** `1 rig`, `3 rigs`. */
export const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;
