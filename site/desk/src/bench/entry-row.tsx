import type { TargetedClipboardEvent, TargetedKeyboardEvent } from 'preact';
import type { Column } from './method-columns.js';
import { reasonWords } from './reasons.js';
import { cellOf } from './sheet.js';
import type { Row, Sheet } from './sheet.js';
import { unitOf } from './fill-sheet.js';

/** A field of the table. */
export interface Place {
  readonly index: number;
  readonly column: number;
}

/** What a field is asked about. */
export interface Asked extends Place {
  readonly words: string;
  /** What a second Enter takes; null for a fault. */
  readonly take: { readonly text: string; readonly unit: string } | null;
}

export interface FieldActs {
  readonly onArrive: (place: Place) => void;
  readonly onLeave: (place: Place) => void;
  readonly onInput: (place: Place, text: string) => void;
  readonly onKey: (place: Place, event: TargetedKeyboardEvent<HTMLInputElement>) => void;
  readonly onPaste: (place: Place, event: TargetedClipboardEvent<HTMLInputElement>) => void;
}

interface Props {
  readonly row: Row;
  readonly index: number;
  readonly sheet: Sheet;
  readonly columns: readonly Column[];
  readonly subject: 'station' | 'specimen';
  readonly treatment: string | null;
  readonly asked: Asked | null;
  readonly acts: FieldActs;
}

export const idOf = ({ index, column }: Place) => `cell-${index}-${column}`;

/** One specimen: a field a reading, and why it does not count. */
export function EntryRow({ row, index, sheet, columns, subject, treatment, asked, acts }: Props) {
  return (
    <tr class={row.reason === null ? '' : 'invalid'}>
      <th scope="row">{row.number}</th>
      {columns.map((known, column) => {
        const place = { index, column };
        const cell = cellOf(row, known.role);
        return (
          <td key={known.role}>
            <input
              id={idOf(place)}
              value={cell.text}
              inputMode="decimal"
              autocomplete="off"
              enterkeyhint="next"
              aria-label={`${known.label}, ${subject} ${row.number}`}
              aria-invalid={asked?.index === index && asked.column === column}
              onFocus={() => acts.onArrive(place)}
              onBlur={() => acts.onLeave(place)}
              onInput={(event) => acts.onInput(place, event.currentTarget.value)}
              onKeyDown={(event) => acts.onKey(place, event)}
              onPaste={(event) => acts.onPaste(place, event)}
            />
            {cell.unit !== '' && cell.unit !== unitOf(sheet, known) && <span class="small"> {cell.unit}</span>}
          </td>
        );
      })}
      <td class="why">{[row.condition === 'treated' ? treatment : null, reasonWords(row.reason)].filter(Boolean).join(', ')}</td>
    </tr>
  );
}

interface QuestionProps {
  readonly asked: Asked;
  readonly width: number;
  readonly onYes: () => void;
  readonly onNo: () => void;
}

/** A fault, or a reading that may be meant otherwise, below its row. */
export function EntryQuestion({ asked: { words, take }, width, onYes, onNo }: QuestionProps) {
  return (
    <tr class="question">
      <td colSpan={width}>
        <span role="alert">{words}</span>
        {take && (
          <span class="acts">
            <button type="button" onClick={onYes}>
              Yes, {take.text} {take.unit}
            </button>
            <button type="button" onClick={onNo}>
              No, I type it again
            </button>
          </span>
        )}
      </td>
    </tr>
  );
}
