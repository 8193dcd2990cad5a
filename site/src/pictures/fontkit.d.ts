/** What is used of fontkit, which brings no types. */
declare module 'fontkit' {
  interface Path {
    scale(x: number, y: number): Path;
    translate(x: number, y: number): Path;
    toSVG(): string;
  }
  interface Font {
    readonly unitsPerEm: number;
    layout(text: string): {
      readonly glyphs: readonly { readonly path: Path }[];
      readonly positions: readonly { readonly xAdvance: number }[];
    };
  }
  export function create(bytes: Uint8Array): Font;
}
