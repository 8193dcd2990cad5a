/**
 * Unpacks the sheets of a workbook within bounds: a few kilobytes can hold gigabytes, and the browser that reads them is the tester's
 * own. What an archive says of its sizes is not relied upon; unpacking stops at the bound.
 */
import { Inflate, strFromU8, zipSync } from 'fflate';

/** Larger than anything that is handed in: "it has …; expected …". */
export class TooLarge extends Error {
  override readonly name = 'TooLarge';
}

const MB = 1024 * 1024;
/** Five thousand submissions of ten specimens are a third of it. */
const MOST_UNPACKED = 64 * MB;
const MOST_CELLS = 2_000_000;
/** One piece unpacks to sixteen megabytes at most (DEFLATE, RFC 1951, makes at most 1032 of one). */
const PIECE = 16 * 1024;
const [STORED, DEFLATED] = [0, 8];

interface Part {
  readonly name: string;
  readonly method: number;
  readonly packed: Uint8Array;
}

/** What the central directory of an archive lists (APPNOTE 4.3.12 and 4.3.16). */
function* partsOf(archive: Uint8Array): Generator<Part> {
  const view = new DataView(archive.buffer, archive.byteOffset, archive.byteLength);
  let end = archive.length - 22;
  while (view.getUint32(end, true) !== 0x06054b50) end--;
  let at = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0; left--) {
    const [nameLength, local] = [view.getUint16(at + 28, true), view.getUint32(at + 42, true)];
    const begins = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    yield {
      name: strFromU8(archive.subarray(at + 46, at + 46 + nameLength)),
      method: view.getUint16(at + 10, true),
      packed: archive.subarray(begins, begins + view.getUint32(at + 20, true)),
    };
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
}

function unpacked({ method, packed }: Part, room: number): Uint8Array {
  if (method !== STORED && method !== DEFLATED) throw new Error(`No reader for parts packed by method ${method}.`);
  const pieces: Uint8Array[] = [];
  let [length, isWhole] = [0, false];
  const take = (piece: Uint8Array, isLast: boolean): void => {
    length += piece.length;
    if (length > room) throw new TooLarge(`unpacks to more than ${MOST_UNPACKED / MB} MB; expected less`);
    pieces.push(piece);
    isWhole ||= isLast;
  };
  if (method === STORED) take(packed, true);
  const inflate = new Inflate(take);
  for (let at = 0; !isWhole; at += PIECE) inflate.push(packed.subarray(at, at + PIECE), at + PIECE >= packed.length);
  const whole = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

/** Where a row or a cell says that it stands, e.g. "7" or "BC7". */
const PLACE = /\sr\s*=\s*["']([^"']*)["']/g;

/** "A" → 1, "Z" → 26, "AA" → 27; no letters, as of a row, → 0. */
function columnOf(letters: string): number {
  let column = 0;
  for (const letter of letters) column = column * 26 + letter.charCodeAt(0) - 64;
  return column;
}

/** A reader makes every cell up to the last one, whatever lies between. */
function requireNear(sheet: Uint8Array): void {
  let [rows, columns] = [0, 1];
  for (const [, place = ''] of strFromU8(sheet).matchAll(PLACE)) {
    const [, letters = '', digits] = /^([A-Z]{0,3})(\d{1,7})$/.exec(place) ?? [];
    if (digits === undefined) throw new TooLarge(`has a cell at "${place.slice(0, 20)}"; expected places such as B7`);
    rows = Math.max(rows, Number(digits));
    columns = Math.max(columns, columnOf(letters));
  }
  if (rows * columns > MOST_CELLS)
    throw new TooLarge(`has cells down to row ${rows} and across to column ${columns}; expected at most ${MOST_CELLS} in all`);
}

/**
 * The same workbook, its texts not packed any more and nothing but them in it.
 * @throws TooLarge beyond the bounds; whatever it meets where the file is no archive
 */
export function unpackWorkbook(archive: Uint8Array): ArrayBuffer {
  const parts: Record<string, Uint8Array> = {};
  let room = MOST_UNPACKED;
  for (const part of partsOf(archive)) {
    if (!/\.xml(\.rels)?$/.test(part.name)) continue;
    const bytes = unpacked(part, room);
    room -= bytes.length;
    if (part.name.includes('sheets/')) requireNear(bytes);
    parts[part.name] = bytes;
  }
  return zipSync(parts, { level: 0 }).buffer;
}
