import { useState } from 'preact/hooks';
import { Photos } from '../parts/photos.js';
import { DropOnSheet } from './drop-on-sheet.js';
import type { DroppedRecord } from './drop-on-sheet.js';
import type { Column } from './method-columns.js';
import { keepRecord } from './kept-records.js';
import type { Sheet } from './sheet.js';
import { firstEmpty, pasted, withRoom, withUnits } from './type-sheet.js';
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

/** What comes to a sheet besides typing: files with readings, records of pulls, photos. */
export function BesideSheet({ sheet, columns, reference, accountId, copyId, onFill }: Props) {
  const fill = (cells: readonly (readonly string[])[], units: Sheet['units'] = {}) =>
    onFill(withRoom(pasted(withUnits(sheet, units), firstEmpty(sheet.rows), columns, cells)));
  const [dropped, setDropped] = useState(0);
  const keepAll = async (records: readonly DroppedRecord[]) => {
    const first = firstEmpty(sheet.rows);
    const numberOf = (index: number) => sheet.rows[index]?.number ?? (sheet.rows.at(-1)?.number ?? 0) + 1 + index - sheet.rows.length;
    for (const [i, { file }] of records.entries())
      await keepRecord({ accountId, copyId, reference, specimen: numberOf(first + i), name: file.name, text: await file.text() });
    setDropped(dropped + records.length);
    const unit = records[0]?.unit;
    fill(
      records.map(({ peak }) => [peak]),
      unit ? { breakingForce: unit } : {},
    );
  };
  return (
    <>
      <DropOnSheet columns={columns} onReadings={fill} onRecords={keepAll} />
      <WaitingRecords of={{ accountId, copyId, reference }} round={dropped} />
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
