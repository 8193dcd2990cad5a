/** All files of a release in one. Pure. */
import { zipSync } from 'fflate';

export const ARCHIVE = 'release.zip';
export const ARCHIVE_TYPE = 'application/zip';
/** The earliest time that the form can tell: what is in it has no times of its own, and the same files give the same bytes. */
const FORM = { mtime: new Date(1980, 0, 1), level: 6 } as const;

/** Where sizes and offsets stand in the records that end an archive (APPNOTE.TXT 6.3, 4.3.12 and 4.3.16), from their beginnings. */
const END = { length: 22, counts: [8, 10], sizeOfList: 12, startOfList: 16 };
const OFFSET_IN_ENTRY = 42;

/** An archive that is written as its files come, in the order of their paths; not in it are manifest and signature, which tell of it. */
export class Archive {
  private readonly list: Uint8Array[] = [];
  private at = 0;

  /** @returns what the file adds */
  add(path: string, bytes: Uint8Array): Uint8Array {
    const alone = zipSync({ [path]: bytes }, FORM);
    const end = alone.length - END.length;
    const start = viewOf(alone).getUint32(end + END.startOfList, true);
    const entry = alone.slice(start, end);
    viewOf(entry).setUint32(OFFSET_IN_ENTRY, this.at, true);
    this.list.push(entry);
    this.at += start;
    return alone.subarray(0, start);
  }

  /** @returns what comes after the last file */
  end(): Uint8Array[] {
    const end = zipSync({});
    const view = viewOf(end);
    for (const at of END.counts) view.setUint16(at, this.list.length, true);
    view.setUint32(
      END.sizeOfList,
      this.list.reduce((sum, { length }) => sum + length, 0),
      true,
    );
    view.setUint32(END.startOfList, this.at, true);
    return [...this.list, end];
  }
}

const viewOf = ({ buffer, byteOffset, byteLength }: Uint8Array): DataView => new DataView(buffer, byteOffset, byteLength);
