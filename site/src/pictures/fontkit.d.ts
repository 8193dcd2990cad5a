/** What is used of fontkit, which brings no types. */
declare module 'fontkit' {
  export interface Glyph {
    readonly path: { translate(x: number, y: number): { toSVG(): string } };
  }
  export interface Font {
    readonly unitsPerEm: number;
    layout(text: string): {
      readonly glyphs: readonly Glyph[];
      readonly positions: readonly { readonly xAdvance: number }[];
    };
  }
  export function create(bytes: Uint8Array): Font;
}
