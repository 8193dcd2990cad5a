import { Photos } from '../parts/photos.js';
import { DropOnSheet } from './drop-on-sheet.js';
import type { Column } from './method-columns.js';
import type { PullRecord } from './records-to-send.js';
import type { Sheet } from './sheet.js';
import { firstEmpty, pasted, withRoom, withUnits } from './type-sheet.js';

interface Props {
  readonly sheet: Sheet;
  readonly columns: readonly Column[];
  /** Of the draft on the server; null until its first row is there. */
  readonly reference: string | null;
  readonly onFill: (sheet: Sheet) => void;
  readonly onRecords: (records: readonly PullRecord[]) => void;
}

/** What comes to a sheet besides typing: files with readings, records of pulls, photos. */
export function BesideSheet({ sheet, columns, reference, onFill, onRecords }: Props) {
  const fill = (cells: readonly (readonly string[])[], units: Sheet['units'] = {}) =>
    onFill(withRoom(pasted(withUnits(sheet, units), firstEmpty(sheet.rows), columns, cells)));
  return (
    <>
      <DropOnSheet
        columns={columns}
        onReadings={fill}
        onRecords={(dropped) => {
          const first = firstEmpty(sheet.rows);
          const numberOf = (index: number) => sheet.rows[index]?.number ?? (sheet.rows.at(-1)?.number ?? 0) + 1 + index - sheet.rows.length;
          onRecords(dropped.map(({ file }, index) => ({ file, specimen: numberOf(first + index) })));
          const unit = dropped[0]?.unit;
          fill(
            dropped.map(({ peak }) => [peak]),
            unit ? { breakingForce: unit } : {},
          );
        }}
      />
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
