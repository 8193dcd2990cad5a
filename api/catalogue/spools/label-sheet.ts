/** A sheet of labels for spools: the blind code, to read and to scan, and nothing else. Pure. */
import encodeQR from 'qr';

const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

const STYLE = `@page{size:A4;margin:10mm}body{margin:0;font:14pt/1.2 ui-monospace,monospace;color:#000;background:#fff}
ul{display:grid;grid-template-columns:repeat(3,1fr);gap:4mm;margin:0;padding:0;list-style:none}
svg{width:24mm;height:24mm}
li{border:0.3mm dashed #777;padding:6mm 3mm;text-align:center;break-inside:avoid}
b{display:block;font-size:22pt;letter-spacing:1mm}small{font-size:9pt}`;

/**
 * Makes a page to print, three labels a row on A4, to cut along the dashes.
 * @param spools blind codes with their lengths [m]; null where the length is not known
 */
export function labelSheet(spools: readonly { readonly blindCode: string; readonly lengthM: string | null }[]): string {
  const labels = spools.map(
    ({ blindCode, lengthM }) =>
      `<li>${encodeQR(blindCode, 'svg', { border: 2 })}<b>${escaped(blindCode)}</b><small>${lengthM === null ? 'spool' : `${escaped(lengthM)} m`}</small></li>`,
  );
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>Labels for spools</title><style>${STYLE}</style><ul>${labels.join('')}</ul></html>`;
}
