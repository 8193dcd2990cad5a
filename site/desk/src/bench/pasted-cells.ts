/** Rows and columns of a copied part of a spreadsheet; null for a single value, which is typed as ever. */
export function pastedCells(text: string): string[][] | null {
  const lines = text.replace(/\r/g, '').replace(/\n+$/, '').split('\n');
  const cells = lines.map((line) => line.split('\t').map((cell) => cell.trim()));
  return cells.length > 1 || (cells[0]?.length ?? 0) > 1 ? cells : null;
}
