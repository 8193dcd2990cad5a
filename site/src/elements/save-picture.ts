import { chartPicture } from './chart-picture.js';
import { framed, type Frame } from './picture-frame.js';
import { notesOn, tablePicture } from './table-picture.js';

/** Twice as fine as on the page, for screens and print. */
const FINENESS = 2;

/** Saves a table or chart of the page as it stands, in the reader's units and theme. @returns the name of the file */
export async function savePicture(one: HTMLElement, kind: 'png' | 'svg', frame: Frame): Promise<string> {
  const svg = one instanceof HTMLTableElement ? framed(tablePicture(one), frame, notesOn(one)) : framed(chartPicture(one), frame, []);
  const text = new XMLSerializer().serializeToString(svg);
  const blob = kind === 'svg' ? new Blob([text], { type: 'image/svg+xml' }) : await asPng(text, svg);
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = `${fileName(`${frame.title} ${frame.name}`)}.${kind}`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  return link.download;
}

const fileName = (words: string): string =>
  words
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-|-$/g, '')
    .slice(0, 80);

async function asPng(text: string, svg: SVGSVGElement): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml,${encodeURIComponent(text)}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = FINENESS * Number(svg.getAttribute('width'));
  canvas.height = FINENESS * Number(svg.getAttribute('height'));
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('This browser makes no PNG of it: take the SVG.'))), 'image/png');
  });
}
