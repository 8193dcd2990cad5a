import { useState } from 'preact/hooks';
import { readTable } from '../table/read-table.js';
import type { Table } from '../table/read-table.js';
import { FileDrop } from '../parts/file-drop.js';
import { failureWords } from '../words/failure-words.js';
import { cellsFor, isRecord, peakOf, readingsIn, unitsOf } from './dropped-readings.js';
import type { DroppedReadings } from './dropped-readings.js';
import type { Sheet } from './sheet.js';
import type { Column } from './method-columns.js';

export interface DroppedRecord {
  readonly file: File;
  readonly peak: string;
  readonly unit: string | null;
}

interface Props {
  readonly columns: readonly Column[];
  /** Fills the sheet from its first empty row on. */
  readonly onReadings: (cells: readonly (readonly string[])[], units: Sheet['units']) => void;
  /** Records of pulls: the peak of each is the reading of the next specimen, the file goes along. */
  readonly onRecords: (records: readonly DroppedRecord[]) => Promise<void>;
}

/** A spreadsheet, a CSV file or the record of a pull, dropped on the sheet: looked at first, then taken. */
export function DropOnSheet({ columns, onReadings, onRecords }: Props) {
  const [dropped, setDropped] = useState<(Table & DroppedReadings) | null>(null);
  const [decimals, setDecimals] = useState<number | null>(null);
  const [said, setSaid] = useState('');

  const look = async (files: readonly File[]) => {
    setDropped(null);
    setSaid('');
    const records: DroppedRecord[] = [];
    for (const file of files) {
      try {
        const table = await readTable(file);
        if (isRecord(table.cells)) {
          const { text, unit } = peakOf(table.cells);
          records.push({ file, peak: [text, unit].filter(Boolean).join(' '), unit });
        } else setDropped({ ...table, ...readingsIn(table.cells, columns) });
      } catch (error) {
        setSaid(failureWords(error));
      }
    }
    if (records.length === 0) return;
    await onRecords(records);
    const peaks = records.map(({ peak }) => peak).join(', ');
    setSaid(
      `${records.length === 1 ? 'A record of a pull: its peak stands' : 'Records of pulls: their peaks stand'} in the sheet, ${peaks}. They are kept on this device and go along when you hand in.`,
    );
  };
  const take = (readings: DroppedReadings) => {
    onReadings(cellsFor(readings, columns, decimals), unitsOf(readings));
    setSaid(`${readings.rows.length} rows of the file stand in the sheet.`);
    setDropped(null);
  };
  return (
    <details>
      <summary>From a file: readings, or the record of a pull</summary>
      <FileDrop
        id="drop-readings"
        label="Drop CSV, a workbook (.xlsx) or a logger’s record here, or choose it"
        accept=".csv,.txt,.tsv,.xlsx"
        isMany
        onFiles={(files) => void look(files).catch((error: unknown) => setSaid(failureWords(error)))}
      />
      <p role="status">{said}</p>
      {dropped && (
        <section>
          <h3>
            {dropped.name}: {dropped.rows.length} rows
          </h3>
          <div class="form">
            {columns.map(({ role, label }) => {
              const source = dropped.sources.find((one) => one.role === role);
              return (
                <label class="field" key={role}>
                  {label} {source?.unit && `[${source.unit}] `}is in
                  <select
                    value={source?.index ?? ''}
                    onChange={(event) => {
                      const chosen = event.currentTarget.value;
                      const others = dropped.sources.filter((one) => one.role !== role);
                      setDropped({
                        ...dropped,
                        sources: chosen === '' ? others : [...others, { role, index: Number(chosen), unit: null }],
                      });
                    }}
                  >
                    <option value="">no column</option>
                    {dropped.titles.map((title, index) => (
                      <option value={index} key={index}>
                        {title}:{' '}
                        {dropped.rows
                          .slice(0, 3)
                          .map((row) => row[index])
                          .join(', ')}{' '}
                        …
                      </option>
                    ))}
                  </select>
                </label>
              );
            })}
            {dropped.isWorkbook && (
              <label class="field">
                Decimals that the gauge showed
                <select
                  value={decimals ?? ''}
                  onChange={(event) => setDecimals(event.currentTarget.value === '' ? null : Number(event.currentTarget.value))}
                >
                  <option value="">as the workbook keeps them, without zeros at the end</option>
                  {[1, 2, 3].map((count) => (
                    <option key={count}>{count}</option>
                  ))}
                </select>
              </label>
            )}
          </div>
          <p class="acts">
            <button
              type="button"
              class="main"
              aria-disabled={dropped.sources.length === 0}
              onClick={() => dropped.sources.length > 0 && take(dropped)}
            >
              Put {dropped.rows.length} rows into the sheet
            </button>
          </p>
        </section>
      )}
    </details>
  );
}
