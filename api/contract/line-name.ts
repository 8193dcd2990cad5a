/** A line with its maker, as people say it: `Tidewick Brinearrow`, but not `Quaymade Quaymade 8`, where the line's own name says whose it is. */
export function lineName(maker: { readonly name: string }, line: { readonly name: string }): string {
  return saysMaker(maker, line) ? line.name : `${maker.name} ${line.name}`;
}

/** Whether the name of a line begins with that of its maker, as a word. */
export const saysMaker = (maker: { readonly name: string }, line: { readonly name: string }): boolean =>
  `${line.name} `.toLowerCase().startsWith(`${maker.name} `.toLowerCase());
