import { useState } from 'preact/hooks';
import { Photos } from '../parts/photos.js';
import { DropOnSheet } from './drop-on-sheet.js';
import type { DroppedRecord } from './drop-on-sheet.js';
import { forgetRecord, keepRecord } from './kept-records.js';
import type { Column } from './method-columns.js';
import type { Sheet } from './sheet.js';
import { firstEmpty, pasted, withRoom, withUnits } from './fill-sheet.js';
import { WaitingRecords } from './waiting-records.js';

interface Props {
  readonly sheet: Sheet;
  readonly columns: readonly Column[];
  /** Of the draft on the server; null until its first row is there. */
  readonly reference: string | null;
  readonly onFill: (sheet: Sheet) => void;
  readonly accountId: string;
  readonly copyId: string;
}

/** What a file did to the sheet; it can be undone until something else is typed. */
interface Filled {
  readonly before: Sheet;
  readonly after: Sheet;
  readonly records: readonly string[];
}

/** What comes to a sheet besides typing: files with readings, records of pulls, photos. */
export function BesideSheet({ sheet, columns, reference, accountId, copyId, onFill }: Props) {
  const [filled, setFilled] = useState<Filled | null>(null);
  const fill = (cells: readonly (readonly string[])[], units: Sheet['units'] = {}, records: readonly string[] = []) => {
    const after = withRoom(pasted(withUnits(sheet, units), firstEmpty(sheet.rows), columns, cells));
    setFilled({ before: sheet, after, records });
    onFill(after);
  };
  const keepAll = async (dropped: readonly DroppedRecord[]) => {
    const first = firstEmpty(sheet.rows);
    const numberOf = (index: number) => sheet.rows[index]?.number ?? (sheet.rows.at(-1)?.number ?? 0) + 1 + index - sheet.rows.length;
    const ids: string[] = [];
    for (const [i, { file }] of dropped.entries())
      ids.push(await keepRecord({ accountId, copyId, reference, specimen: numberOf(first + i), name: file.name, text: await file.text() }));
    const unit = dropped[0]?.unit;
    fill(
      dropped.map(({ peak }) => [peak]),
      unit ? { breakingForce: unit } : {},
      ids,
    );
  };
  const undo = async ({ before, records }: Filled) => {
    for (const id of records) await forgetRecord(id);
    setFilled(null);
    onFill(before);
  };
  return (
    <>
      <DropOnSheet columns={columns} onReadings={fill} onRecords={keepAll} />
      <WaitingRecords of={{ accountId, copyId, reference }} round={filled} />
      {filled?.after === sheet && (
        <p class="acts">
          <button type="button" onClick={() => void undo(filled)}>
            Undo: take the rows of the file out again
          </button>
        </p>
      )}
      <details>
        <summary>Photos of a break or of the apparatus</summary>
        {reference === null ? (
          <p class="soft">Photos can be added as soon as the first row is on the server.</p>
        ) : (
          <Photos of={`submissions/${reference}`} first="break" canAdd specimens={sheet.rows.map(({ number }) => number)} />
        )}
      </details>
    </>
  );
}
