/** The package's own types stand in a file that no compiler finds. */
declare module 'unicode-confusables' {
  /** Puts the character that each one is mistaken for in its place. */
  export function rectifyConfusion(text: string): string;
}
